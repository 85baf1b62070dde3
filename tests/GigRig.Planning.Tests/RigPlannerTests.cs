using CsCheck;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests;

public sealed class RigPlannerTests
{
    [Fact]
    public Task It_gives_the_same_rig_twice() =>
        GenContest.Mixed.SampleAsync(async draft =>
        {
            var arranged = Arranged(draft);

            var (once, again) = (await Ask.Quietly(arranged), await Ask.Quietly(arranged));

            Assert.Equal((once as PlanOutcome.Proposed)?.Best, (again as PlanOutcome.Proposed)?.Best);
            Assert.Equal(once.GetType(), again.GetType());
        }, iter: 60);

    [Fact]
    public Task Whatever_the_seed_the_choice_is_as_good() =>
        Gen.Select(GenContest.Mixed, Gen.Int[0, 1000]).SampleAsync(async (draft, seed) =>
        {
            var planner = new RigPlanner();
            var usual = await Ask.Quietly(draft);

            var other = await planner.PlanAsync(draft.Problem(), PlannerOptions.Default with { Explain = false, Seed = seed }, cancel: TestContext.Current.CancellationToken);

            Assert.Equal(usual.GetType(), other.GetType());
            if (usual is PlanOutcome.Proposed a && other is PlanOutcome.Proposed b)
                Assert.Equal(0, a.Best.Score.CompareChoice(b.Best.Score));
        }, iter: 60);

    [Fact]
    public Task Any_question_that_makes_sense_is_answered_without_a_throw() =>
        AnyRig.Problem.SampleAsync(async any =>
        {
            var problem = (any.Draft with { Options = any.Options with { TimeLimit = TimeSpan.FromSeconds(2), Alternatives = 1 } }).Problem();

            var outcome = await new RigPlanner().PlanAsync(problem, cancel: TestContext.Current.CancellationToken);

            if (outcome is PlanOutcome.Proposed proposed)
                Assert.All(proposed.Alternatives.Prepend(proposed.Best), p => Assert.Empty(NaiveRigChecker.Faults(problem, p.Rig)));
        }, iter: 60);

    [Fact]
    public async Task Many_may_ask_one_planner_at_once()
    {
        var planner = new RigPlanner();
        var problem = A.Draft(A.Board(250, 120)).With(A.Device("echo").Doing("delay"), A.Device("hall").Doing("reverb"), A.Device("fuzz").Doing("drive")).Wanting("delay").Wanting("reverb").Wanting("drive").Problem();

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => planner.PlanAsync(problem, cancel: TestContext.Current.CancellationToken)));

        Assert.All(outcomes, outcome => Assert.Equal(Assert.IsType<PlanOutcome.Proposed>(outcomes[0]).Best, Assert.IsType<PlanOutcome.Proposed>(outcome).Best));
    }

    private static RigProblemDraft Arranged(RigProblemDraft draft) => draft with { Options = draft.Options with { Arrange = true } };
}
