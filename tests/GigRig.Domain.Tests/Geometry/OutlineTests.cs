using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Geometry;

public sealed class OutlineTests
{
    private static readonly Device Box = A.Device("box").Sized(70, 120);

    /// <summary>Worked by hand: a 15 × 16 mm audio plug centred 40 mm along the side, on a body 70 wide and 120 deep.</summary>
    [Theory]
    [InlineData(Side.Left, -15, 32, 15, 16)]
    [InlineData(Side.Right, 70, 32, 15, 16)]
    [InlineData(Side.Front, 32, -15, 16, 15)]
    [InlineData(Side.Rear, 32, 120, 16, 15)]
    public void A_plug_stands_outside_its_side(Side side, int x, int y, int width, int depth) =>
        Assert.Equal([Mm(x, y, width, depth)], Outline.Of(Box.WithJack(JackUse.In, side, 40), PlugSizes.Usual).Plugs);

    [Fact]
    public void A_power_plug_has_a_size_of_its_own() =>
        Assert.Equal([Mm(29, 120, 12, 13)], Outline.Of(Box.WithJack(JackUse.Power, Side.Rear, 35), PlugSizes.Usual).Plugs);

    [Theory]
    [InlineData(JackUse.Send)]
    [InlineData(JackUse.Return)]
    [InlineData(JackUse.Control)]
    [InlineData(JackUse.Out)]
    public void Every_other_jack_takes_an_audio_plug(JackUse use) =>
        Assert.Equal([Mm(27, 120, 16, 15)], Outline.Of(Box.WithJack(use, Side.Rear, 35), PlugSizes.Usual).Plugs);

    [Fact]
    public void A_top_jack_reserves_nothing() =>
        Assert.Empty(Outline.Of(Box.WithJack(JackUse.In, Side.Top, 35), PlugSizes.Usual).Plugs);

    [Theory]
    [InlineData(0, 16)]
    [InlineData(15, 0)]
    public void A_plug_without_extent_reserves_nothing(int standsOut, int width) =>
        Assert.Empty(Outline.Of(Box.WithJack(JackUse.In, Side.Left, 35), PlugSizes.Usual with { Audio = new(standsOut.Mm, width.Mm) }).Plugs);

    [Fact]
    public void An_odd_plug_width_starts_at_the_lesser_half()
    {
        var plugs = new PlugSizes(new(10.Mm, 15.Mm), new(10.Mm, 15.Mm));
        Assert.Equal([Mm(33, 120, 15, 10)], Outline.Of(Box.WithJack(JackUse.In, Side.Rear, 40), plugs).Plugs);
    }

    /// <summary>Turned clockwise, what was at the right comes to the front, then to the left, then to the rear.</summary>
    [Theory]
    [InlineData(Turn.None, 170, 232, 15, 16, 185, 240, 70, 120)]
    [InlineData(Turn.Quarter, 132, 185, 16, 15, 140, 185, 120, 70)]
    [InlineData(Turn.Half, 85, 272, 15, 16, 85, 280, 70, 120)]
    [InlineData(Turn.ThreeQuarter, 172, 270, 16, 15, 180, 285, 120, 70)]
    public void Plugs_and_jacks_turn_rigidly_with_the_body(Turn turn, int x, int y, int width, int depth, int tipX, int tipY, int bodyWidth, int bodyDepth)
    {
        var outline = Outline.Of(Box.WithJack(JackUse.In, Side.Right, 40), PlugSizes.Usual);
        var placement = new Placement(Box.Id, new(100.Mm, 200.Mm), turn);

        var (body, plugs) = outline.Placed(placement);

        Assert.Equal(Mm(100, 200, bodyWidth, bodyDepth), body);
        Assert.Equal([Mm(x, y, width, depth)], plugs);
        Assert.Equal(new Point(tipX.Mm, tipY.Mm), Assert.Single(outline.PlacedJacks(placement)).Tip);
    }

    [Fact]
    public void The_tip_of_a_top_jack_is_the_jack_halfway_back()
    {
        var outline = Outline.Of(Box.WithJack(JackUse.In, Side.Top, 20), PlugSizes.Usual);
        Assert.Equal(new Point(20.Mm, 60.Mm), Assert.Single(outline.Jacks).Tip);
    }

    [Fact]
    public void Switches_turn_with_the_body()
    {
        var outline = Outline.Of(Box.WithSwitch(35, 20), PlugSizes.Usual);
        Assert.Equal([new Point(20.Mm, 35.Mm)], outline.PlacedSwitches(new(Box.Id, default, Turn.Quarter)));
    }

    private static Rect Mm(int x, int y, int width, int depth) => new(x.Mm, y.Mm, width.Mm, depth.Mm);
}
