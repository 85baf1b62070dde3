using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

/// <summary>Rails, keep-outs and lid.</summary>
public sealed class SurfaceTests
{
    [Theory]
    [InlineData(60, 200)] // whole on one rail
    [InlineData(61, 41)] // 10 mm on each of two
    [InlineData(90, 70)]
    public async Task A_body_stands_whole_on_a_rail_or_with_ten_millimetres_on_two(int depth, int gap) =>
        await Ask.Best(OnRails(depth, gap));

    [Theory]
    [InlineData(61, 42)]
    [InlineData(90, 71)]
    public async Task With_a_millimetre_less_on_one_of_the_two_it_does_not(int depth, int gap) =>
        await Ask.Impossible(OnRails(depth, gap));

    [Fact]
    public async Task A_body_deeper_than_two_rails_stands_so_that_it_does_not_rock()
    {
        // Rails at 0–20 and 40–60 of 200: the middle of a body may not lie behind 60.
        var draft = A.Draft(A.Board(100, 200).Railed(0, 20).Railed(40, 60)).With(A.Device("deep").Sized(100, 120).Doing("delay")).Needing("delay");

        Assert.Equal(0.Mm, (await Ask.Best(draft)).Rig.Placements[0].At.Y);
        await Ask.Impossible(draft with { Devices = [draft.Devices[0].Sized(100, 121)] });
    }

    [Fact]
    public async Task A_keep_out_is_stood_around()
    {
        var draft = A.Draft(A.Board(150, 100).KeepingOut(100, 0, 50, 100)).With(A.Device("echo").Doing("delay")).Needing("delay");

        Assert.Equal(0.Mm, (await Ask.Best(draft)).Rig.Placements[0].At.X);
        await Ask.Impossible(draft with { Board = A.Board(150, 100).KeepingOut(99, 40, 1, 1) });
    }

    [Fact]
    public async Task A_keep_out_keeps_plugs_out_too()
    {
        var draft = A.Draft(A.Board(150, 100).KeepingOut(115, 0, 35, 100).Overhanging(0, 0, 0, 0))
            .With(A.Device("echo").WithJack(JackUse.In, Side.Right, 50).Doing("delay"))
            .Needing("delay");

        await Ask.Best(draft);
        await Ask.Impossible(draft with { Board = draft.Board with { KeepOuts = [new(114.Mm, 0.Mm, 36.Mm, 100.Mm)] } });
    }

    [Fact]
    public async Task The_lid_may_touch_but_not_press()
    {
        var draft = A.Draft(A.Board().Clearing(over: 50)).With(A.Device("echo").Sized(100, 100, 50).Doing("delay")).Needing("delay");

        await Ask.Best(draft);
        await Ask.Impossible(draft with { Devices = [draft.Devices[0].Sized(100, 100, 51)] });
    }

    /// <summary>Two rails of 60 mm, so far apart, the board ends with the second.</summary>
    private static RigProblemDraft OnRails(int depth, int gap) => A.Draft(A.Board(100, 120 + gap).Railed(0, 60).Railed(60 + gap, 120 + gap))
        .With(A.Device("echo").Sized(100, depth).Doing("delay"))
        .Needing("delay");
}
