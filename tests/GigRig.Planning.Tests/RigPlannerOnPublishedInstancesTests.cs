using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.TestKit.Instances;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests;

/// <summary>The planner against answers proved in print; the paper stands beside each instance in <c>tests/instances</c>.</summary>
public sealed class RigPlannerOnPublishedInstancesTests
{
    /// <summary>Each takes more than two seconds of one core; the benchmark program solves them, and the tests of stopping use some.</summary>
    private static readonly string[] LeftToTheBenchmark = ["cgcut2", "okp1", "okp2", "okp5", "okp2 turning"];

    public static TheoryData<string, string> Knapsacks { get; } = new(PublishedKnapsacks.All.Where(k => !LeftToTheBenchmark.Contains(k.ToString())).Select(k => (k.ToString(), k.Paper)));

    public static TheoryData<string, string> Packings { get; } = new(PublishedPackings.All.Select(p => (p.Name, p.Paper)));

    [Theory]
    [MemberData(nameof(Knapsacks))]
    public async Task A_knapsack_is_proved_at_its_published_optimum(string name, string paper)
    {
        var knapsack = PublishedKnapsacks.All.Single(k => k.ToString() == name);

        var (proposed, problem) = await ProposedAsync(knapsack.ToProblem());

        Assert.True(proposed.Proven, paper);
        Assert.Equal((knapsack.Optimum, knapsack.Optimum), (proposed.Best.Score.Wants, proposed.Bound));
        Assert.Empty(NaiveRigChecker.Faults(problem, proposed.Best.Rig));
    }

    [Theory]
    [MemberData(nameof(Packings))]
    public async Task A_packing_question_is_decided_as_published(string name, string paper)
    {
        var packing = PublishedPackings.All.Single(p => p.Name == name);
        if (!packing.Feasible)
        {
            Assert.True(await Ask.Quietly(Patient(packing.ToProblem())) is PlanOutcome.Impossible, paper);
            return;
        }

        var (proposed, problem) = await ProposedAsync(packing.ToProblem());

        Assert.Equal(problem.Devices.Count, proposed.Best.Rig.Placements.Count);
        Assert.Empty(NaiveRigChecker.Faults(problem, proposed.Best.Rig));
    }

    [Fact]
    public void What_is_left_out_here_is_there_all_the_same() =>
        Assert.All(LeftToTheBenchmark, name => Assert.Contains(name, PublishedKnapsacks.All.Select(k => k.ToString())));

    private static async Task<(PlanOutcome.Proposed, RigProblem)> ProposedAsync(RigProblemDraft draft) =>
        (Assert.IsType<PlanOutcome.Proposed>(await Ask.Quietly(Patient(draft))), draft.Problem());

    /// <summary>On a busy machine ten seconds may be one.</summary>
    private static RigProblemDraft Patient(RigProblemDraft draft) => draft with { Options = draft.Options with { TimeLimit = TimeSpan.FromSeconds(60) } };
}
