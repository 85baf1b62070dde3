using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class FixedPlacesRuleTests
{
    private static readonly RigProblem Problem = A.Draft().With(A.Device("echo").Turning(Turn.None, Turn.Quarter)).Fixing("echo", 120, 40, Turn.Quarter).Problem();

    [Fact]
    public void Passes_where_it_stands_exactly_there() => Judge.Passes(RuleIds.FixedPlaces, Problem, A.Rig().Placing("echo", 120, 40, Turn.Quarter));

    [Fact]
    public void Fails_one_millimetre_off() => Judge.Fails(
        RuleIds.FixedPlaces, Problem, A.Rig().Placing("echo", 121, 40, Turn.Quarter),
        "echo", "1 mm", "echo is fixed at 120, 40 mm, turned by 90° but stands at 121, 40 mm, turned by 90°.");

    [Fact]
    public void Fails_turned_another_way() => Judge.Fails(
        RuleIds.FixedPlaces, Problem, A.Rig().Placing("echo", 120, 40),
        "echo", "0 mm", "echo is fixed at 120, 40 mm, turned by 90° but stands at 120, 40 mm.");

    [Fact]
    public void Fails_for_one_left_at_home() => Judge.Fails(
        RuleIds.FixedPlaces, Problem, A.Rig(),
        "echo", "", "echo is fixed at 120, 40 mm, turned by 90° but does not come along.");

    [Fact]
    public void A_supply_on_top_may_be_fixed_as_well()
    {
        var problem = A.Draft().FedBy(A.Supply().Mounted(SupplyMount.Top, 100, 50, 30)).Fixing("supply", 10, 0).Problem();

        Judge.Passes(RuleIds.FixedPlaces, problem, A.Rig().PlacingSupply(10, 0));
        Judge.Fails(RuleIds.FixedPlaces, problem, A.Rig().PlacingSupply(0, 20), "supply", "30 mm", "supply is fixed at 10, 0 mm but stands at 0, 20 mm.");
    }
}
