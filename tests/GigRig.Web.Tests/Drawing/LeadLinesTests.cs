using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;
using GigRig.Web.Drawing;
using Xunit;

namespace GigRig.Web.Tests.Drawing;

public sealed class LeadLinesTests
{
    private static readonly RigProblem Boxes = A.Draft(A.Board(600, 200))
        .With(A.Device("a").WithAudioJacks(), A.Device("b").WithAudioJacks(), A.Device("c"))
        .Problem();

    [Fact]
    public void A_lead_runs_from_the_out_plug_to_the_next_in_plug()
    {
        // 100 × 100 mm boxes, plugs 15 mm, jacks at half depth: a's output is on its left, b's input on its right.
        var lead = Assert.Single(LeadLines.Of(Boxes, A.Rig().Placing("a", 400, 0).Placing("b", 100, 0).Chained("a b")));

        Assert.Equal([new SceneSpot(385, 150), new SceneSpot(215, 150)], lead.Corners);
        Assert.Equal((ChainPart.Front, "a", "a", "b", new SceneSpot(300, 150)), (lead.Part, lead.Mark, lead.FromId.Value, lead.ToId.Value, lead.Middle));
    }

    [Fact]
    public void Where_plugs_meet_tip_to_tip_the_mark_stands_at_the_tips() =>
        Assert.Equal(new SceneSpot(215, 150), Assert.Single(LeadLines.Of(Boxes, A.Rig().Placing("a", 230, 0).Placing("b", 100, 0).Chained("a b"))).Middle);

    [Fact]
    public void No_lead_runs_behind_a_body()
    {
        // From a's left past both boxes to b's right: the straight way would cross them.
        var rig = A.Rig().Placing("a", 100, 0).Placing("b", 400, 0).Chained("a b");
        var scene = BoardSceneMapper.Map(Boxes, rig);

        var corners = Assert.Single(scene.Leads).Corners;
        Assert.All(scene.Bodies, body => Assert.DoesNotContain(corners.Zip(corners.Skip(1)), piece => Crosses(body.Area, piece.First, piece.Second)));
    }

    [Fact]
    public void The_loop_is_a_part_of_its_own_with_no_lead_to_the_front()
    {
        var problem = (Boxes.Draft with { Amp = A.Amp().Looped() }).Problem();

        var lead = Assert.Single(LeadLines.Of(problem, A.Rig().Placing("a", 0, 0).Placing("b", 200, 0).Placing("c", 400, 0).Chained("a", "b c")));

        Assert.Equal((ChainPart.Loop, "b", "c"), (lead.Part, lead.FromId.Value, lead.ToId.Value));
    }

    [Fact]
    public void A_box_without_jacks_is_met_at_its_middle() =>
        Assert.Equal(new SceneSpot(450, 100), Assert.Single(LeadLines.Of(Boxes, A.Rig().Placing("b", 200, 0).Placing("c", 400, 50).Chained("b c"))).Corners[^1]);

    [Fact]
    public void A_line_is_rounded_at_its_corners_and_never_by_more_than_half_a_piece() =>
        Assert.Equal("M0 0L5 0Q10 0 10 5L10 18Q10 20 12 20L14 20", SvgNumbers.Line([new(0, 0), new(10, 0), new(10, 20), new(14, 20)], 6));

    private static bool Crosses(SceneArea body, SceneSpot a, SceneSpot b) =>
        Math.Max(a.X, b.X) > body.X && Math.Min(a.X, b.X) < body.Right && Math.Max(a.Y, b.Y) > body.Y && Math.Min(a.Y, b.Y) < body.Bottom;
}
