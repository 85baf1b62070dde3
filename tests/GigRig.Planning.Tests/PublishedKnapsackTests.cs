using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.TestKit.Instances;

namespace GigRig.Planning.Tests;

/// <summary>The planner against optima proved in print; the papers stand beside the numbers in tests/instances.</summary>
public sealed class PublishedKnapsackTests
{
    public static TheoryData<string> Small => [.. PublishedKnapsacks.Oriented.Concat(PublishedKnapsacks.Gcut).Where(k => !k.Name.StartsWith("okp", StringComparison.Ordinal) && k.Name != "cgcut2").Select(k => k.ToString())];

    [Theory]
    [MemberData(nameof(Small))]
    public async Task Reaches_and_proves_the_published_optimum(string name)
    {
        var knapsack = PublishedKnapsacks.All.Single(k => k.ToString() == name);

        var outcome = await new RigPlanner().PlanAsync(knapsack.ToProblem().Problem(), cancel: TestContext.Current.CancellationToken);

        var proposed = Assert.IsType<PlanOutcome.Proposed>(outcome);
        TestContext.Current.TestOutputHelper?.WriteLine($"{name} {proposed.Best.Score} proven {proposed.Proven} bound {proposed.Bound} {proposed.Elapsed.TotalMilliseconds:0} ms");
        Assert.Equal(knapsack.Optimum, proposed.Best.Score.Wants);
        Assert.Equal(knapsack.Optimum, proposed.Bound);
    }
}
