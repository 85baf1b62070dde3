using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

/// <summary>Load, free area and switch spacing.</summary>
public sealed class StandingLimitsTests
{
    [Fact]
    public async Task The_board_carries_just_what_it_may()
    {
        await Ask.Best(Heavy(1500));
        await Ask.Impossible(Heavy(1499));
    }

    [Theory]
    [InlineData(SupplyMount.Under, 2500)]
    [InlineData(SupplyMount.Top, 2500)]
    [InlineData(SupplyMount.Off, 1500)]
    public async Task The_board_carries_a_supply_that_is_mounted_on_it(SupplyMount mount, int load)
    {
        await Ask.Best(Heavy(load).FedBy(A.Supply().Weighing(1000).Mounted(mount, 100, 100, 30)));
        await Ask.Impossible(Heavy(load - 1).FedBy(A.Supply().Weighing(1000).Mounted(mount, 100, 100, 30)));
    }

    [Fact]
    public async Task Just_enough_of_the_board_stays_free()
    {
        // Two boxes of 100 × 100 on 200 × 200: half of it.
        var draft = Two().Limited(freeArea: 50);

        await Ask.Best(draft);
        await Ask.Impossible(Two().Limited(freeArea: 51));
    }

    [Fact]
    public async Task A_supply_on_top_counts_as_taken()
    {
        var onTop = Two().FedBy(A.Supply().Mounted(SupplyMount.Top, 100, 50, 30));

        // 25 000 of 40 000 mm² are taken.
        await Ask.Best(onTop.Limited(freeArea: 37));
        await Ask.Impossible(onTop.Limited(freeArea: 38));
    }

    [Fact]
    public async Task Switches_are_at_least_as_far_apart_as_asked()
    {
        // Centred on bodies of 100 mm, corner to corner on 200 × 200: 141.4 mm at most.
        var draft = A.Draft(A.Board(200, 200)).With(A.Device("echo").WithSwitch(50, 50).Doing("delay"), A.Device("hall").WithSwitch(50, 50).Doing("reverb")).Needing("delay", "reverb");

        await Ask.Best(draft.SpacingSwitches(141));
        await Ask.Impossible(draft.SpacingSwitches(142));
    }

    [Fact]
    public async Task Boxes_turn_their_switches_apart()
    {
        var turning = A.Device("echo").WithSwitch(90, 50).Turning(Turn.None, Turn.Half).Doing("delay");
        var draft = A.Draft(A.Board(200, 100)).With(turning, A.Device("hall").WithSwitch(90, 50).Doing("reverb")).Needing("delay", "reverb");

        // Beside each other as they are: 100 mm. With the first one turned about and to the left: 180.
        await Ask.Best(draft.SpacingSwitches(180));
        await Ask.Impossible(draft.SpacingSwitches(181));
        Assert.Equal(1, (await Ask.Proposed((draft with { Event = A.Event() }).Wanting("delay").Wanting("reverb").SpacingSwitches(181))).Best.Score.Devices);
    }

    private static RigProblemDraft Two() => A.Draft(A.Board(200, 200)).With(A.Device("echo").Doing("delay"), A.Device("hall").Doing("reverb")).Needing("delay", "reverb");

    /// <summary>Two boxes of 1000 and 500 g.</summary>
    private static RigProblemDraft Heavy(int load) => A.Draft(A.Board().Bearing(load))
        .With(A.Device("echo").Weighing(1000).Doing("delay"), A.Device("hall").Weighing(500).Doing("reverb"))
        .Needing("delay", "reverb");
}
