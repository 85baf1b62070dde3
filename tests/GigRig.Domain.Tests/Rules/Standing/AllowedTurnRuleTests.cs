using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class AllowedTurnRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo").Turning(Turn.None, Turn.Half))
        .FedBy(A.Supply().Mounted(SupplyMount.Top, 200, 80, 30))
        .Problem();

    [Theory]
    [InlineData(Turn.None)]
    [InlineData(Turn.Half)]
    public void Passes_for_a_turn_on_the_list(Turn turn) =>
        Judge.Passes(RuleIds.AllowedTurn, Problem, A.Rig().Placing("echo", 0, 0, turn));

    [Fact]
    public void Fails_for_a_turn_that_is_not() =>
        Judge.Fails(RuleIds.AllowedTurn, Problem, A.Rig().Placing("echo", 0, 0, Turn.Quarter), "echo", "90°", "echo is turned by 90°; it may stand at 0° and 180° only.");

    [Fact]
    public void A_top_supply_stands_straight_or_turned_a_quarter()
    {
        Judge.Passes(RuleIds.AllowedTurn, Problem, A.Rig().PlacingSupply(0, 0, Turn.Quarter));
        Judge.Fails(RuleIds.AllowedTurn, Problem, A.Rig().PlacingSupply(0, 0, Turn.Half), "supply", "180°", "supply is turned by 180°; it may stand at 0° and 90° only.");
    }

    [Fact]
    public void Fails_for_a_turn_that_is_no_right_angle() =>
        Judge.Fails(RuleIds.AllowedTurn, Problem, A.Rig().Placing("echo", 0, 0, (Turn)45));
}
