using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class SupplySpaceRuleTests
{
    private static readonly RigProblem OnTop = A.Draft().FedBy(A.Supply().Mounted(SupplyMount.Top, 200, 80, 30)).Problem();

    [Fact]
    public void Passes_for_a_top_supply_with_a_place() => Judge.Passes(RuleIds.SupplySpace, OnTop, A.Rig().PlacingSupply(0, 0));

    [Fact]
    public void Fails_for_a_top_supply_without_one() =>
        Judge.Fails(RuleIds.SupplySpace, OnTop, A.Rig(), "supply", "", "supply goes on top of the board but has no place on it.");

    [Fact]
    public void Fails_for_a_place_where_the_supply_is_not_mounted_on_top() =>
        Judge.Fails(RuleIds.SupplySpace, A.Draft().FedBy(A.Supply()).Problem(), A.Rig().PlacingSupply(0, 0), "supply", "", "supply has a place on top of the board but is not mounted there.");

    [Theory]
    [InlineData(460, 140, 40)]
    [InlineData(140, 460, 40)]
    [InlineData(100, 200, 1)]
    public void Passes_for_an_under_supply_that_fits_either_way_round(int width, int depth, int height) =>
        Judge.Passes(RuleIds.SupplySpace, Under(width, depth, height), A.Rig());

    [Theory]
    [InlineData(200, 100, 41, "1 mm", "supply is 41 mm high; under the board there are 40 mm.")]
    [InlineData(141, 460, 40, "1 mm", "supply is 141 mm deep; under the board there are 140 mm.")]
    [InlineData(470, 100, 40, "10 mm", "supply is 470 mm wide; under the board there are 460 mm.")]
    public void Fails_for_one_that_does_not(int width, int depth, int height, string amount, string sentence) =>
        Judge.Fails(RuleIds.SupplySpace, Under(width, depth, height), A.Rig(), "supply", amount, sentence);

    [Fact]
    public void Without_a_clearance_any_height_goes_under() =>
        Judge.Passes(RuleIds.SupplySpace, A.Draft().FedBy(A.Supply().Mounted(SupplyMount.Under, 200, 80, 3000)).Problem(), A.Rig());

    private static RigProblem Under(int width, int depth, int height) =>
        A.Draft(A.Board(460, 140).Clearing(under: 40)).FedBy(A.Supply().Mounted(SupplyMount.Under, width, depth, height)).Problem();
}
