using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

public sealed class ThingsApartTests
{
    [Fact]
    public async Task Two_boxes_that_fill_the_width_both_come_along() =>
        Assert.Equal(2, (await Ask.Best(TwoBoxes(A.Board(150, 100)))).Score.Devices);

    [Fact]
    public async Task One_millimetre_less_and_the_box_that_is_wanted_less_stays_at_home()
    {
        var best = await Ask.Best(TwoBoxes(A.Board(149, 100)));

        Assert.Equal("echo", Assert.Single(best.Rig.Placements).Id.Value);
    }

    [Fact]
    public async Task One_millimetre_less_depth_and_neither_stands() =>
        Assert.Empty((await Ask.Best(TwoBoxes(A.Board(150, 99)))).Rig.Placements);

    [Fact]
    public async Task A_box_turns_a_quarter_where_it_may_and_must()
    {
        var draft = A.Draft(A.Board(150, 80)).With(A.Device("echo").Sized(80, 150).Turning(Turn.None, Turn.Quarter).Doing("delay")).Needing("delay");

        Assert.Equal(Turn.Quarter, Assert.Single((await Ask.Best(draft)).Rig.Placements).Turn);
        await Ask.Impossible(draft with { Devices = [draft.Devices[0].Turning(Turn.None)] });
    }

    [Fact]
    public async Task Plugs_that_touch_are_apart() =>
        Assert.Equal(2, (await Ask.Best(Facing(spare: 0))).Score.Devices);

    [Fact]
    public async Task Plugs_that_would_overlap_by_a_millimetre_keep_a_box_at_home() =>
        Assert.Equal(1, (await Ask.Best(Facing(spare: -1))).Score.Devices);

    [Fact]
    public async Task A_plug_may_stand_over_the_edge_so_that_the_box_turns_it_outward()
    {
        // Between the bodies there is no room for either plug.
        var draft = A.Draft(A.Board(140, 100)).With(Box("echo", Side.Right).Doing("delay"), Box("hall", Side.Left).Doing("reverb")).Needing("delay", "reverb");

        await Ask.Best(draft with { Devices = [.. draft.Devices.Select(d => d.Turning(Turn.None, Turn.Half))] });
    }

    [Fact]
    public async Task Where_plugs_are_not_in_each_others_way_boxes_stand_closer()
    {
        // At 20 and 60 mm of the depth, 16 mm wide: the 15 mm plugs pass each other, but not the bodies.
        var draft = A.Draft(A.Board(155, 100).Overhanging(0, 0, 0, 0))
            .With(A.Device("echo").Sized(70, 100).WithJack(JackUse.In, Side.Right, 20).Doing("delay"), A.Device("hall").Sized(70, 100).WithJack(JackUse.Out, Side.Left, 60).Doing("reverb"))
            .Needing("delay", "reverb");

        await Ask.Best(draft);
        await Ask.Impossible(draft with { Board = A.Board(154, 100).Overhanging(0, 0, 0, 0) });
    }

    private static RigProblemDraft TwoBoxes(Board board) => A.Draft(board)
        .With(A.Device("echo").Sized(80, 100).Doing("delay"), A.Device("hall").Sized(70, 100).Doing("reverb"))
        .Wanting("delay", 20)
        .Wanting("reverb", 10);

    /// <summary>Two boxes of 70 mm whose 15 mm plugs face each other at the same depth, on a board that leaves just as much.</summary>
    private static RigProblemDraft Facing(int spare) => A.Draft(A.Board(70 + 15 + 15 + 70 + spare, 100).Overhanging(0, 0, 0, 0))
        .With(Box("echo", Side.Right).Doing("delay"), Box("hall", Side.Left).Doing("reverb"))
        .Wanting("delay")
        .Wanting("reverb");

    private static Device Box(string id, Side side) => A.Device(id).Sized(70, 100).WithJack(JackUse.In, side, 50);
}
