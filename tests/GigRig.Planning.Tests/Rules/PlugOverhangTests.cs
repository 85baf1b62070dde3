using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

public sealed class PlugOverhangTests
{
    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    [InlineData(Side.Rear)]
    [InlineData(Side.Front)]
    public async Task A_plug_stands_out_as_far_as_it_may_and_no_further(Side side)
    {
        await Ask.Best(Snug(side, overhang: 15));
        await Ask.Impossible(Snug(side, overhang: 14));
    }

    [Fact]
    public async Task A_front_plug_stands_within_the_board_where_feet_come()
    {
        var draft = A.Draft(A.Board(100, 115)).With(A.Device("echo").WithJack(JackUse.In, Side.Front, 50).Doing("delay")).Needing("delay");

        Assert.Equal(15.Mm, (await Ask.Best(draft)).Rig.Placements[0].At.Y);
        await Ask.Impossible(draft with { Board = A.Board(100, 114) });
    }

    [Fact]
    public async Task Half_a_turn_takes_the_plug_to_the_rear()
    {
        var draft = A.Draft(A.Board(100, 100)).With(A.Device("echo").Turning(Turn.None, Turn.Half).WithJack(JackUse.In, Side.Front, 50).Doing("delay")).Needing("delay");

        Assert.Equal(Turn.Half, (await Ask.Best(draft)).Rig.Placements[0].Turn);
    }

    [Fact]
    public async Task A_plug_that_does_not_stand_out_needs_no_overhang()
    {
        var draft = A.Draft(A.Board(100, 100).Overhanging(0, 0, 0, 0)).With(A.Device("echo").WithJack(JackUse.In, Side.Left, 0).Doing("delay")).Needing("delay");

        await Ask.Best(draft with { Options = draft.Options with { Plugs = new(new(0.Mm, 16.Mm), new(0.Mm, 12.Mm)) } });
    }

    [Fact]
    public async Task A_jack_on_top_needs_no_room_at_all() =>
        await Ask.Best(A.Draft(A.Board(100, 100).Overhanging(0, 0, 0, 0)).With(A.Device("echo").WithJack(JackUse.In, Side.Top, 50).Doing("delay")).Needing("delay"));

    /// <summary>A body as large as the board, one plug 15 mm long.</summary>
    private static RigProblemDraft Snug(Side side, int overhang) => A.Draft(A.Board(100, 100).Overhanging(overhang, overhang, overhang, overhang))
        .With(A.Device("echo").WithJack(JackUse.In, side, 50).Doing("delay"))
        .Needing("delay");
}
