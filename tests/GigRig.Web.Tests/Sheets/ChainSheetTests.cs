using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

public sealed class ChainSheetTests
{
    [Fact]
    public void Front_and_loop_are_two_lists_numbered_through()
    {
        var problem = A.Draft().With(A.Device("a"), A.Device("b"), A.Device("c")).Through(A.Amp().Looped()).Problem();

        var sheet = ChainSheet.Of(problem, A.Rig().Placing("a", 0, 0).Placing("b", 100, 0).Placing("c", 200, 0).Chained("c a", "b"));

        Assert.Equal(("instrument", "amp input"), sheet.FrontEnds);
        Assert.Equal([(1, "c"), (2, "a")], sheet.Front.Select(stop => (stop.Number!.Value, stop.Name)));
        Assert.Equal([(3, "b")], sheet.Loop.Select(stop => (stop.Number!.Value, stop.Name)));
    }

    [Fact]
    public void A_stop_that_stands_nowhere_has_no_number()
    {
        var sheet = ChainSheet.Of(A.Draft().Problem(), A.Rig().Chained("ghost"));

        Assert.Equal((null, "ghost"), (sheet.Front[0].Number, sheet.Front[0].Name));
    }
}
