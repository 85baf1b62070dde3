using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;
using GigRig.TestKit.Instances;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests;

public sealed class PlanMemoryTests
{
    private static readonly PlannerOptions Quiet = PlannerOptions.Default with { Explain = false };

    /// <summary>The same gear asked about in several ways, by one that remembers and by one that does not.</summary>
    [Fact]
    public Task What_is_remembered_makes_no_answer_better_or_worse() =>
        Gen.Select(Gen.OneOf(GenContest.Mixed, GenContest.AroundFixed), Gen.Int[0, 1000]).SampleAsync(async (draft, seed) =>
        {
            var planner = new RigPlanner(new());
            RigProblemDraft[] asked =
            [
                draft,
                draft with { Board = draft.Board with { Width = draft.Board.Width + 2.Mm } },
                draft.Shuffled(seed),
                draft with { Board = draft.Board with { Rails = [], KeepOuts = [] } },
                draft with { Event = draft.Event with { Needs = [.. draft.Event.Needs.Reverse().Skip(1)] } },
                draft,
                draft with { Options = draft.Options with { Ban = One(seed), Pin = [], Fixed = [] } },
                draft with { Options = draft.Options with { Pin = One(seed), Ban = [] } },
                draft with { Options = draft.Options with { Pin = [], Ban = [], Fixed = [] } },
                draft with { Options = draft.Options with { Pin = One(seed / 7), Ban = [] } },
            ];
            foreach (var next in asked)
            {
                var (fresh, remembering) = (await Ask.Quietly(next), await planner.PlanAsync(next.Problem(), Quiet, cancel: TestContext.Current.CancellationToken));
                Assert.Equal(fresh.GetType(), remembering.GetType());
                if (fresh is not PlanOutcome.Proposed a || remembering is not PlanOutcome.Proposed b)
                    continue;
                Assert.Equal((0, a.Proven, a.Bound), (a.Best.Score.CompareChoice(b.Best.Score), b.Proven, b.Bound));
                Assert.Empty(NaiveRigChecker.Faults(next.Problem(), b.Best.Rig));
            }

            ValueList<GearId> One(int number) => draft.Devices.Count == 0 ? [] : [draft.Devices[number % draft.Devices.Count].Id];
        }, iter: 60);

    [Fact]
    public async Task Asked_again_it_begins_with_the_last_answer()
    {
        var problem = A.Draft(A.Board(300, 100))
            .With(A.Device("brick").Sized(300, 100).Rated("delay", 2), A.Device("echo").Doing("delay"), A.Device("hall").Doing("reverb"), A.Device("fuzz").Doing("drive"))
            .Wanting("delay").Wanting("reverb").Wanting("drive").Problem();
        var planner = new RigPlanner(new());
        var first = Assert.IsType<PlanOutcome.Proposed>(await planner.PlanAsync(problem, Quiet, cancel: TestContext.Current.CancellationToken));
        var reports = new Reports();

        await planner.PlanAsync(problem, Quiet, reports, TestContext.Current.CancellationToken);

        Assert.Equal(first.Best.Rig, reports.All[0].Best!.Rig);
    }

    [Theory]
    [InlineData("ngcut2")]
    [InlineData("ngcut11")]
    [InlineData("cgcut1")]
    public async Task With_a_thing_of_the_answer_pinned_it_is_proved_by_what_was_proved_before(string name)
    {
        var draft = PublishedKnapsacks.Oriented.Single(k => k.Name == name).ToProblem();
        var planner = new RigPlanner(new());
        var first = Assert.IsType<PlanOutcome.Proposed>(await planner.PlanAsync(draft.Problem(), Quiet, cancel: TestContext.Current.CancellationToken));
        var pinned = (draft with { Options = draft.Options with { Pin = [first.Best.Rig.Placements[0].Id] } }).Problem();
        var powerless = Quiet with { SetNodes = 1, FitNodes = 0, FitBudget = TimeSpan.Zero, RoundsBeforeGeometry = int.MaxValue };

        var second = Assert.IsType<PlanOutcome.Proposed>(await planner.PlanAsync(pinned, powerless, cancel: TestContext.Current.CancellationToken));
        var alone = Assert.IsType<PlanOutcome.Proposed>(await new RigPlanner().PlanAsync(pinned, powerless, cancel: TestContext.Current.CancellationToken));

        Assert.Equal((true, 0), (second.Proven, second.Best.Score.CompareChoice(first.Best.Score)));
        Assert.False(alone.Proven);
    }

    [Fact]
    public async Task With_one_thing_of_the_answer_banned_it_begins_with_the_rest_of_it()
    {
        var draft = A.Draft(A.Board(300, 100))
            .With(A.Device("echo").Doing("delay"), A.Device("hall").Doing("reverb"), A.Device("fuzz").Doing("drive"))
            .Wanting("delay").Wanting("reverb").Wanting("drive");
        var planner = new RigPlanner(new());
        var first = Assert.IsType<PlanOutcome.Proposed>(await planner.PlanAsync(draft.Problem(), Quiet, cancel: TestContext.Current.CancellationToken));
        var reports = new Reports();

        await planner.PlanAsync((draft with { Options = draft.Options with { Ban = [new("hall")] } }).Problem(), Quiet, reports, TestContext.Current.CancellationToken);

        Assert.Equal(first.Best.Rig.Placements.Where(p => p.Id != new GearId("hall")), reports.All[0].Best!.Rig.Placements);
    }

    [Fact]
    public void It_stays_small()
    {
        var memory = new PlanMemory();

        for (var i = 0; i < PlanMemory.MostRigs + 10; i++)
            memory.Remember(A.Rig().Placing("echo", i, 0));

        Assert.Equal(PlanMemory.MostRigs, memory.Rigs.Count);
        Assert.Equal(A.Rig().Placing("echo", PlanMemory.MostRigs + 9, 0), memory.Rigs[0]);
    }

    [Fact]
    public async Task Many_may_ask_at_once()
    {
        var drafts = new List<RigProblemDraft>();
        GenContest.Crowded.Sample(draft => { lock (drafts) drafts.Add(draft); }, iter: 20);
        var planner = new RigPlanner(new());

        var answers = await Task.WhenAll(drafts.Concat(drafts).Select(draft => planner.PlanAsync(draft.Problem(), Quiet, cancel: TestContext.Current.CancellationToken)));

        for (var i = 0; i < drafts.Count; i++)
            Assert.Equal(answers[i].GetType(), answers[i + drafts.Count].GetType());
    }

    private sealed class Reports : IProgress<PlanProgress>
    {
        public List<PlanProgress> All { get; } = [];

        public void Report(PlanProgress value) => All.Add(value);
    }
}
