using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Arranging;

public sealed class ArrangerTests
{
    [Fact]
    public async Task An_empty_board_is_left_as_it_is()
    {
        var best = await Ask.Best(A.Draft().With(A.Device("fuzz").Doing("drive.fuzz")).Wanting("delay"));

        Assert.Empty(best.Rig.Placements);
    }
}
