using System.Diagnostics;
using GigRig.Benchmarks.Generating;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.TestKit.Instances;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests;

/// <summary>Calling it off and running out of time, on instances that take long: never a throw, never a false no, always the best so far.</summary>
public sealed class RigPlannerStoppingTests
{
    /// <summary>How long an answer may take after it was called off. Far more than it needs, so that a busy machine fails nothing.</summary>
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(5);

    public static TheoryData<string, int> Hard { get; } = new(
        from name in new[] { "cgcut2", "okp1", "okp2" }
        from milliseconds in new[] { 5, 100, 500 }
        select (name, milliseconds));

    public static TheoryData<string> Packings { get; } = new(PublishedPackings.All.Select(p => p.Name));

    [Fact]
    public async Task Called_off_before_it_starts_it_is_undecided()
    {
        using var cancel = new CancellationTokenSource();
        await cancel.CancelAsync();

        var outcome = await new RigPlanner().PlanAsync(Knapsack("ngcut1").ToProblem().Problem(), cancel: cancel.Token);

        Assert.InRange(Assert.IsType<PlanOutcome.Undecided>(outcome).Bound, Knapsack("ngcut1").Optimum, long.MaxValue);
    }

    [Theory]
    [MemberData(nameof(Hard))]
    public async Task Called_off_on_the_way_it_answers_soon_with_the_best_so_far(string name, int milliseconds)
    {
        using var cancel = new CancellationTokenSource();
        cancel.CancelAfter(milliseconds);

        await AssertHonestAsync(Knapsack(name), Knapsack(name).ToProblem(), milliseconds, cancel.Token);
    }

    [Theory]
    [MemberData(nameof(Hard))]
    public async Task Out_of_time_it_answers_soon_with_the_best_so_far(string name, int milliseconds)
    {
        var draft = Knapsack(name).ToProblem();

        await AssertHonestAsync(Knapsack(name), Within(draft, milliseconds), milliseconds, TestContext.Current.CancellationToken);
    }

    /// <summary>By our own search, and by the solver's model alone.</summary>
    [Theory]
    [InlineData("okp1", 1, 40_000)]
    [InlineData("okp1", 1, 0)]
    [InlineData("okp2", 2, 40_000)]
    [InlineData("okp2", 2, 0)]
    public async Task Stopped_at_a_rig_it_keeps_the_best_and_never_calls_it_proven(string name, int rigs, int setNodes)
    {
        var draft = Knapsack(name).ToProblem();
        using var cancel = new CancellationTokenSource();
        var progress = new Reports { StopAt = rigs, Stop = cancel.Cancel };

        var outcome = await new RigPlanner().PlanAsync(
            (draft with { Options = draft.Options with { Arrange = false } }).Problem(), PlannerOptions.Default with { SetNodes = setNodes }, progress, cancel.Token);

        var proposed = Assert.IsType<PlanOutcome.Proposed>(outcome);
        Assert.Equal(0, proposed.Best.Score.CompareTo(progress.All.MaxBy(rig => rig.Score.Wants)!.Score));
        Assert.False(proposed.Proven);
        Assert.InRange(Knapsack(name).Optimum, proposed.Best.Score.Wants, proposed.Bound);
    }

    [Fact]
    public async Task A_library_of_hundreds_stopped_at_its_first_rig_is_answered_with_a_rig_that_is_not_proven()
    {
        var problem = new LibraryGenerator(1).Make(300, 460, 135).Problem();
        using var cancel = new CancellationTokenSource();
        var progress = new Reports { StopAt = 1, Stop = cancel.Cancel };

        var proposed = Assert.IsType<PlanOutcome.Proposed>(await new RigPlanner().PlanAsync(problem, null, progress, cancel.Token));

        Assert.False(proposed.Proven);
        Assert.Empty(NaiveRigChecker.Faults(problem, proposed.Best.Rig));
        Assert.Empty(proposed.Repairs);
    }

    [Theory]
    [MemberData(nameof(Packings))]
    public async Task With_little_time_a_packing_question_is_answered_rightly_or_left_open(string name)
    {
        var packing = PublishedPackings.All.Single(p => p.Name == name);

        var outcome = await Ask.Planner(Within(packing.ToProblem(), 40));

        Assert.IsNotType(packing.Feasible ? typeof(PlanOutcome.Impossible) : typeof(PlanOutcome.Proposed), outcome);
    }

    [Fact]
    public async Task Called_off_while_it_looks_for_the_reason_it_still_answers_soon()
    {
        using var cancel = new CancellationTokenSource();
        var asked = Stopwatch.GetTimestamp();
        cancel.CancelAfter(200);

        var outcome = await new RigPlanner().PlanAsync(PublishedPackings.All.Single(p => p.Name == "E10N10").ToProblem().Problem(), cancel: cancel.Token);

        Assert.InRange(Stopwatch.GetElapsedTime(asked), TimeSpan.Zero, Soon);
        Assert.IsNotType<PlanOutcome.Proposed>(outcome);
    }

    private static async Task AssertHonestAsync(PublishedKnapsack knapsack, RigProblemDraft draft, int milliseconds, CancellationToken cancel)
    {
        var problem = draft.Problem();
        var progress = new Reports();
        var asked = Stopwatch.GetTimestamp();

        var outcome = await new RigPlanner().PlanAsync(problem, null, progress, cancel);

        Assert.InRange(Stopwatch.GetElapsedTime(asked), TimeSpan.Zero, TimeSpan.FromMilliseconds(milliseconds) + Soon);
        if (outcome is PlanOutcome.Undecided undecided)
        {
            Assert.Empty(progress.All);
            Assert.InRange(undecided.Bound, knapsack.Optimum, long.MaxValue);
            return;
        }

        var proposed = Assert.IsType<PlanOutcome.Proposed>(outcome);
        Assert.Empty(NaiveRigChecker.Faults(problem, proposed.Best.Rig));
        Assert.InRange(knapsack.Optimum, proposed.Best.Score.Wants, proposed.Bound);
        Assert.All(progress.All, rig => Assert.InRange(proposed.Best.Score.CompareChoice(rig.Score), 0, 1));
        Assert.True(!proposed.Proven || proposed.Best.Score.Wants == knapsack.Optimum);
    }

    private static RigProblemDraft Within(RigProblemDraft draft, int milliseconds) =>
        draft with { Options = draft.Options with { TimeLimit = TimeSpan.FromMilliseconds(milliseconds) } };

    private static PublishedKnapsack Knapsack(string name) => PublishedKnapsacks.Oriented.Single(k => k.Name == name);

    /// <summary>The rigs reported on the way. Called from the searching thread, one report after the other.</summary>
    private sealed class Reports : IProgress<PlanProgress>
    {
        public List<Proposal> All { get; } = [];

        public int StopAt { get; init; }

        public Action Stop { get; init; } = () => { };

        public void Report(PlanProgress value)
        {
            if (value.Best is not { } rig)
                return;
            All.Add(rig);
            if (All.Count == StopAt)
                Stop();
        }
    }
}
