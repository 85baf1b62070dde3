using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Tests.Fitting;

public sealed class TurningsTests
{
    private static readonly Surface Board = SurfaceOf(90, 60);

    [Fact]
    public void Where_nothing_is_refuted_they_are_all_there_but_those_that_alike_things_would_repeat()
    {
        var (one, other) = (WaysOf(Board, 20, 10), WaysOf(Board, 30, 5));

        var all = new Turnings(Board, _ => false).Of([one, other, one])!;

        // Two alike, so three ways between them, times two.
        Assert.Equal(6, all.Select(t => string.Join(' ', t.Select(s => s.Pose.Width))).Distinct().Count());
        Assert.Equal(6, all.Count);
    }

    [Fact]
    public void What_is_refuted_goes_no_further()
    {
        Stance[][] ways = [WaysOf(Board, 20, 10), WaysOf(Board, 30, 5), WaysOf(Board, 12, 7)];

        var left = new Turnings(Board, turned => turned.Length == 2 && turned[0].Pose.Width == 20).Of(ways)!;

        Assert.Equal(4, left.Count);
        Assert.All(left, turned => Assert.Equal(10, turned[0].Pose.Width));
    }

    [Fact]
    public void Where_the_board_is_the_same_over_one_thing_is_turned_one_way_only()
    {
        var square = SurfaceOf(60, 60);

        Assert.Equal(4, new Turnings(square, _ => false).Of([WaysOf(square, 20, 10), WaysOf(square, 30, 5), WaysOf(square, 12, 7)])!.Count);
    }

    private static Surface SurfaceOf(int width, int depth) => new(new Board(new("board"), "board", width.Mm, depth.Mm, 0.G, [], [], Overhang.Usual), switchSpacing: 0);

    private static Stance[] WaysOf(Surface surface, int width, int depth) => Stance.AllOf(
        Shapes.Of(new Device(new("box"), "box", new(width.Mm, depth.Mm, 1.Mm), 0.G, [Turn.None, Turn.Quarter], null, [], Bypass.True, [], []), PlugSizes.Usual),
        surface);
}
