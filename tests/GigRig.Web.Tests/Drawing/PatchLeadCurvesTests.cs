using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Drawing;
using Xunit;

namespace GigRig.Web.Tests.Drawing;

public sealed class PatchLeadCurvesTests
{
    private static readonly RigProblem Boxes = A.Draft(A.Board(600, 200))
        .With(A.Device("a").WithAudioJacks(), A.Device("b").WithAudioJacks(), A.Device("c"))
        .Problem();

    [Fact]
    public void A_lead_runs_from_the_out_plug_to_the_next_in_plug_and_leaves_each_straight()
    {
        // 100 × 100 mm boxes, plugs 15 mm, jacks at half depth: a's output is on its left, b's input on its right.
        var rig = A.Rig().Placing("a", 400, 0).Placing("b", 100, 0).Chained("a b");

        var lead = Assert.Single(PatchLeadCurves.Of(Boxes, rig));

        Assert.Equal((new SceneSpot(385, 150), new SceneSpot(215, 150)), (lead.From, lead.To));
        Assert.Equal((new SceneSpot(345, 150), new SceneSpot(255, 150)), (lead.FromPull, lead.ToPull));
        Assert.Equal(new SceneSpot(300, 150), lead.At(0.5));
    }

    [Fact]
    public void A_turned_box_sends_its_lead_the_way_its_jack_faces()
    {
        var rig = A.Rig().Placing("a", 400, 0, Turn.Quarter).Placing("b", 100, 0).Chained("a b");

        var lead = Assert.Single(PatchLeadCurves.Of(Boxes, rig));

        // Left faces away from the player after one quarter turn clockwise.
        Assert.True(lead.FromPull.X == lead.From.X && lead.FromPull.Y < lead.From.Y);
    }

    [Fact]
    public void The_loop_is_a_part_of_its_own_with_no_lead_to_the_front()
    {
        var rig = A.Rig().Placing("a", 0, 0).Placing("b", 200, 0).Placing("c", 400, 0).Chained("a", "b c");

        var lead = Assert.Single(PatchLeadCurves.Of(Boxes, rig));

        Assert.Equal((ChainPart.Loop, "b", "c"), (lead.Part, lead.FromId.Value, lead.ToId.Value));
    }

    [Fact]
    public void A_box_without_jacks_is_met_at_its_middle()
    {
        var rig = A.Rig().Placing("b", 200, 0).Placing("c", 400, 50).Chained("b c");

        Assert.Equal(new SceneSpot(450, 100), Assert.Single(PatchLeadCurves.Of(Boxes, rig)).To);
    }
}
