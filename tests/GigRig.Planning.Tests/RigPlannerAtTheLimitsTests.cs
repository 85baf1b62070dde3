using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests;

/// <summary>The largest questions that pass the checks, each lopsided in its own way.</summary>
public sealed class RigPlannerAtTheLimitsTests
{
    [Fact]
    public async Task Small_things_on_the_largest_board()
    {
        var things = Enumerable.Range(1, 40).Select(i => A.Device($"thing{i}").Sized(1 + i % 3, 1 + i % 2).Doing($"role{i}")).ToArray();

        var best = await Ask.Best(A.Draft(A.Board(3000, 3000)).With(things).Needing([.. things.Select(t => t.Functions[0].Role.Key)]));

        Assert.Equal(40, best.Score.Devices);
    }

    [Fact]
    public async Task As_many_devices_as_may_be()
    {
        var boxes = Enumerable.Range(1, 1000).Select(i => A.Device($"box{i}").Rated($"role{i % 5}", 1 + i % 5).Weighing(100 + i)).ToArray();

        var proposed = await Ask.Proposed(A.Draft(A.Board(500, 100)).With(boxes).Wanting("role0").Wanting("role1").Wanting("role2").Wanting("role3").Wanting("role4"));

        Assert.Equal((50, 5), (proposed.Best.Score.Wants, proposed.Best.Score.Devices));
    }

    [Fact]
    public async Task As_many_outlets_as_may_be_no_two_alike()
    {
        var boxes = Enumerable.Range(1, 20).Select(i => A.Device($"box{i}").Sized(10, 10).Drawing(100 + 3 * i).Doing($"role{i}")).ToArray();
        var outlets = Enumerable.Range(1, 64).Select(i => A.Outlet($"{i}").Giving(100 + i)).ToArray();

        var best = await Ask.Best(A.Draft().With(boxes).FedBy(outlets).Needing([.. boxes.Select(t => t.Functions[0].Role.Key)]));

        Assert.Equal(20, best.Rig.HookUp.Select(feed => feed.Outlets[0]).Distinct().Count());
    }

    [Fact]
    public async Task Outlets_that_can_be_joined_in_more_ways_than_can_be_listed_are_never_called_impossible()
    {
        // Sixty-four outlets, no two alike, before 6 A: nearly all of them together would do.
        var outlets = Enumerable.Range(1, 64).Select(i => A.Outlet($"{i}").Giving(60 + i)).ToArray();
        var draft = A.Draft().With(A.Device("oven").Drawing(6000).Doing("delay")).Needing("delay").FedBy(outlets).OwningAdapters(parallel: 99);

        Assert.IsNotType<PlanOutcome.Impossible>(await Ask.Planner(draft));
    }
}
