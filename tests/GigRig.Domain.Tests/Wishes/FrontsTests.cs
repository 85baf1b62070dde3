using GigRig.Domain.Gear;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wishes;

public sealed class FrontsTests
{
    [Fact]
    public void Counts_different_lines_with_a_supply_on_top_among_them()
    {
        var problem = A.Draft().With(A.Device("echo"), A.Device("hall"), A.Device("fuzz")).FedBy(A.Supply().Mounted(SupplyMount.Top, 50, 50, 30)).Problem();
        var rig = A.Rig().Placing("echo", 0, 0).Placing("hall", 100, 0).Placing("fuzz", 200, 5);

        Assert.Equal(2, Fronts.Of(problem, rig));
        Assert.Equal(3, Fronts.Of(problem, rig.PlacingSupply(300, 7)));
        Assert.Equal(2, Fronts.Of(problem, rig.Placing("ghost", 0, 99)));
        Assert.Equal(0, Fronts.Of(problem, A.Rig()));
    }
}
