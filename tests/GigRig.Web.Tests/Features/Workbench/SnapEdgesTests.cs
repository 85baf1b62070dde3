using GigRig.TestKit.Building;
using GigRig.Web.Drawing;
using GigRig.Web.Features.Workbench;
using Xunit;

namespace GigRig.Web.Tests.Features.Workbench;

public sealed class SnapEdgesTests
{
    private static readonly BoardScene Scene = BoardSceneMapper.Map(
        A.Draft(A.Board(400, 200).Railed(50, 70)).With(A.Device("echo").Sized(100, 80).WithAudioJacks()).Problem(),
        A.Rig().Placing("echo", 30, 20));

    [Fact]
    public void The_board_and_its_rails_line_up_bodies()
    {
        var ground = SnapEdges.Of(Scene).Where(edge => edge.Of == EdgeOf.Ground).ToList();

        Assert.All(ground, edge => Assert.Equal("", edge.Id));
        Assert.Equal([(0, false), (400, true)], ground.Where(edge => !edge.Across).Select(edge => ((int)edge.At, edge.Far)));
        // From the rear: the board's rear edge, its front, the rail's rear, its front.
        Assert.Equal([(0, false), (200, true), (130, false), (150, true)], ground.Where(edge => edge.Across).Select(edge => ((int)edge.At, edge.Far)));
    }

    [Fact]
    public void A_body_and_its_plugs_have_four_edges_each()
    {
        var edges = SnapEdges.Of(Scene).Where(edge => edge.Id == "echo").ToList();

        Assert.Equal(4, edges.Count(edge => edge.Of == EdgeOf.Body));
        Assert.Equal(8, edges.Count(edge => edge.Of == EdgeOf.Plug));
        Assert.Contains(new SnapEdge("echo", Across: false, At: 130, From: 100, To: 180, Far: true, EdgeOf.Body), edges);
        // The usual audio plug is 15 mm long and 16 mm wide, here at half depth of the right side.
        Assert.Contains(new SnapEdge("echo", Across: false, At: 145, From: 132, To: 148, Far: true, EdgeOf.Plug), edges);
    }
}
