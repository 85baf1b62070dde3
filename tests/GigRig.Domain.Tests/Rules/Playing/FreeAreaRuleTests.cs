using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Playing;

public sealed class FreeAreaRuleTests
{
    /// <summary>A body of 10 000 mm² on a board of 40 000 mm².</summary>
    [Theory]
    [InlineData(75, true)]
    [InlineData(76, false)]
    public void A_quarter_covered_leaves_three_quarters_free(int percent, bool passes)
    {
        var problem = A.Draft(A.Board(200, 200)).With(A.Device("echo").WithAudioJacks()).Limited(freeArea: percent).Problem();
        if (passes)
            Judge.Passes(RuleIds.FreeArea, problem, A.Rig().Placing("echo", 0, 0));
        else
            Judge.Fails(RuleIds.FreeArea, problem, A.Rig().Placing("echo", 0, 0), "", "400 mm²", "The bodies cover 10000 of 40000 mm²; night keeps 76 % of the board free.");
    }

    [Fact]
    public void A_supply_on_top_covers_area_and_one_underneath_does_not()
    {
        Judge.Fails(RuleIds.FreeArea, Supplied(SupplyMount.Top), A.Rig().PlacingSupply(0, 0));
        Judge.Passes(RuleIds.FreeArea, Supplied(SupplyMount.Under), A.Rig());
    }

    private static RigProblem Supplied(SupplyMount mount) =>
        A.Draft(A.Board(200, 200)).FedBy(A.Supply().Mounted(mount, 100, 100, 30)).Limited(freeArea: 80).Problem();
}
