using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.TestKit.Instances;

namespace GigRig.Planning.Tests;

/// <summary>The planner against optima proved in print; the papers stand beside the numbers in tests/instances. Those missing here take longer: see docs/benchmarks.md.</summary>
public sealed class PublishedKnapsackTests
{
    public static TheoryData<string> Quick =>
    [
        "ngcut1", "ngcut2", "ngcut3", "ngcut4", "ngcut5", "ngcut6", "ngcut7", "ngcut8", "ngcut9", "ngcut10", "ngcut11", "ngcut12",
        "cgcut1", "hccut3", "gcut1",
        "ngcut2 turning", "ngcut3 turning", "ngcut4 turning", "ngcut7 turning", "ngcut10 turning",
    ];

    [Theory]
    [MemberData(nameof(Quick))]
    public async Task The_published_optimum_is_reached_and_proved(string name)
    {
        var knapsack = PublishedKnapsacks.All.Single(k => k.ToString() == name);
        var draft = knapsack.ToProblem();
        var patient = draft with { Options = draft.Options with { TimeLimit = TimeSpan.FromMinutes(2), Arrange = false } };

        var outcome = await new RigPlanner().PlanAsync(patient.Problem(), PlannerOptions.Default with { Explain = false }, cancel: TestContext.Current.CancellationToken);

        var proposed = Assert.IsType<PlanOutcome.Proposed>(outcome);
        Assert.Equal(knapsack.Optimum, proposed.Best.Score.Wants);
        Assert.True(proposed.Proven);
        Assert.Equal(knapsack.Optimum, proposed.Bound);
    }
}
