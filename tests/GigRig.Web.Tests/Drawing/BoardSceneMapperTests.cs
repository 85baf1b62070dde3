using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Drawing;
using Xunit;

namespace GigRig.Web.Tests.Drawing;

public sealed class BoardSceneMapperTests
{
    private static readonly RigProblem TwoBoxes = A.Draft(A.Board(400, 200))
        .With(A.Device("tuner").Sized(40, 100).Doing("tuner"), A.Device("echo").Sized(70, 120).Doing("delay"))
        .Problem();

    [Fact]
    public void The_front_edge_of_the_board_is_at_the_bottom_of_the_picture()
    {
        var atTheFront = Assert.Single(BoardSceneMapper.Map(TwoBoxes, A.Rig().Placing("tuner", 10, 0)).Bodies);

        Assert.Equal(new SceneArea(10, 100, 40, 100), atTheFront.Area);
        Assert.Equal(new SceneEdge(new(10, 200), new(50, 200)), atTheFront.Front);
    }

    [Theory]
    [InlineData(Turn.None, 70, 120, 0, 120, 70, 120)]
    [InlineData(Turn.Quarter, 120, 70, 0, 0, 0, 70)]
    [InlineData(Turn.Half, 70, 120, 0, 0, 70, 0)]
    [InlineData(Turn.ThreeQuarter, 120, 70, 120, 0, 120, 70)]
    public void A_turned_body_lies_turned_and_shows_where_its_own_front_went(Turn turn, double width, double height, double x1, double y1, double x2, double y2)
    {
        var body = Assert.Single(BoardSceneMapper.Map(TwoBoxes, A.Rig().Placing("echo", 30, 20, turn)).Bodies);

        Assert.Equal((width, height), (body.Area.Width, body.Area.Height));
        Assert.Equal(new SceneEdge(new(30 + x1, body.Area.Y + y1), new(30 + x2, body.Area.Y + y2)), body.Front);
    }

    [Fact]
    public void Rails_and_keep_outs_lie_where_the_board_has_them()
    {
        var board = A.Board(400, 200).Railed(0, 60).Railed(120, 200).KeepingOut(300, 150, 50, 50);

        var scene = BoardSceneMapper.Map(A.Draft(board).Problem(), A.Rig());

        Assert.Equal([new SceneArea(0, 140, 400, 60), new SceneArea(0, 0, 400, 80)], scene.Rails);
        Assert.Equal([new SceneArea(300, 0, 50, 50)], scene.KeepOuts);
    }

    [Fact]
    public void Things_are_numbered_in_audio_order_whatever_their_place()
    {
        var rig = A.Rig().Placing("echo", 0, 0).Placing("tuner", 200, 0).Chained("tuner echo");

        var scene = BoardSceneMapper.Map(TwoBoxes, rig);

        Assert.Equal([(1, "tuner"), (2, "echo")], scene.Bodies.Select(body => (body.Number, body.Name)));
        Assert.Equal([(1, "tuner"), (2, "echo")], scene.Legend.Select(line => (line.Number, line.Name)));
    }

    [Fact]
    public void Plugs_stand_outside_the_body_and_are_told_apart_by_kind()
    {
        var device = A.Device("box").Sized(70, 120).WithJack(JackUse.In, Side.Right, 60).WithJack(JackUse.Power, Side.Rear, 35).WithJack(JackUse.Out, Side.Top, 20);
        var problem = A.Draft(A.Board(400, 200)).With(device).Problem();

        var body = Assert.Single(BoardSceneMapper.Map(problem, A.Rig().Placing("box", 100, 0)).Bodies);

        // 15 × 16 mm audio and 13 × 12 mm power plugs, the usual sizes; the top jack takes no room beside the body.
        Assert.Equal([new ScenePlug(PlugKind.Audio, new(170, 132, 15, 16)), new ScenePlug(PlugKind.Power, new(129, 67, 12, 13))], body.Plugs);
    }

    [Fact]
    public void All_that_is_drawn_lies_within_the_extent()
    {
        var problem = A.Draft(A.Board(400, 200)).With(A.Device("a").WithAudioJacks(), A.Device("b").WithAudioJacks()).Problem();
        var rig = A.Rig().Placing("a", 0, 0).Placing("b", 300, 100).Chained("a b");

        var scene = BoardSceneMapper.Map(problem, rig);

        Assert.All(
            scene.Bodies.SelectMany(body => body.Plugs.Select(plug => plug.Area).Append(body.Area)).Append(scene.Surface),
            area => Assert.Equal(scene.Extent, scene.Extent.Around(area)));
        Assert.All(scene.Leads.SelectMany(lead => lead.Corners), spot => Assert.Equal(scene.Extent, scene.Extent.Around(spot)));
    }

    [Theory]
    [InlineData(PictureWidth.Narrow, 360, 12)]
    [InlineData(PictureWidth.Wide, 900, 12)]
    public void Letters_are_at_least_twelve_pixels_on_the_screen_they_are_made_for(PictureWidth width, double pixels, double least)
    {
        var scene = BoardSceneMapper.Map(TwoBoxes, A.Rig().Placing("echo", 0, 0), width);

        // Within a pixel: margins are added once the size of the letters is known.
        Assert.InRange(scene.TextSize * pixels / scene.Extent.Width, least - 1, least + 3);
    }

    [Fact]
    public void A_supply_on_top_stands_among_the_devices_with_the_last_number()
    {
        var supply = A.Supply(A.Outlet("1")).Mounted(SupplyMount.Top, 160, 80, 40);
        var problem = A.Draft(A.Board(400, 200)).With(A.Device("box").Doing("tuner")).FedBy(supply).Problem();

        var scene = BoardSceneMapper.Map(problem, A.Rig().Placing("box", 200, 0).PlacingSupply(0, 100, Turn.Quarter));

        var last = scene.Bodies[1];
        Assert.Equal((2, "supply", new SceneArea(0, -60, 80, 160)), (last.Number, last.Name, last.Area));
    }

    [Fact]
    public void What_the_problem_does_not_know_is_left_out_and_breaks_nothing()
    {
        var rig = A.Rig().Placing("ghost", 0, 0).Placing("echo", 100, 0).Chained("ghost echo other", "ghost");

        var scene = BoardSceneMapper.Map(TwoBoxes, rig);

        Assert.Equal("echo", Assert.Single(scene.Bodies).Name);
        Assert.Empty(scene.Leads);
    }

    [Fact]
    public void An_empty_board_is_still_a_picture()
    {
        var scene = BoardSceneMapper.Map(TwoBoxes, A.Rig());

        Assert.Equal("board seen from above, empty", scene.Title);
        Assert.Equal((100, "100 mm"), (scene.ScaleBar.Length, scene.ScaleBar.Text));
    }

    [Fact]
    public void Scale_and_words_are_in_the_readers_unit_and_the_picture_is_not()
    {
        var rig = A.Rig().Placing("echo", 30, 0);
        var (metric, inches) = (BoardSceneMapper.Map(TwoBoxes, rig), BoardSceneMapper.Map(TwoBoxes, rig, unit: LengthUnit.Inches));

        // One inch is 25.4 mm (international yard and pound agreement, 1959).
        Assert.Equal((4 * 25.4, "4 in"), (inches.ScaleBar.Length, inches.ScaleBar.Text));
        Assert.Contains("15.75 in by 7.87 in", inches.Description);
        Assert.Equal(metric.Bodies, inches.Bodies);
    }

    [Fact]
    public void The_words_for_those_who_hear_it_name_each_thing_with_its_place_and_turn()
    {
        var scene = BoardSceneMapper.Map(TwoBoxes, A.Rig().Placing("echo", 30, 20, Turn.Quarter));

        Assert.Equal("board seen from above, 1 device", scene.Title);
        Assert.Equal("400 mm by 200 mm; the player stands at the bottom. 1: echo, 30 mm from the left, 20 mm from the front, turned 90° clockwise.", scene.Description);
    }
}
