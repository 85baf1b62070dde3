using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class KnownThingsRuleTests
{
    private static readonly RigProblem Problem = A.Draft().With(A.Device("echo").Drawing(10)).With(A.OffBoard("clip")).FedBy(A.Outlet("1")).Problem();

    [Fact]
    public void Passes_where_everything_is_on_offer() =>
        Judge.Passes(RuleIds.KnownThings, Problem, A.Rig().Placing("echo", 0, 0).Feeding("echo", "1").Bringing("clip"));

    [Fact]
    public void Fails_for_a_strange_device_on_the_board_and_in_the_chain() =>
        Assert.Equal(
            ["ghost stands on the board but is not among the devices on offer.", "ghost is in the chain but is not among the devices on offer."],
            Judge.Ask(RuleIds.KnownThings, Problem, A.Rig().Placing("ghost", 0, 0)).Select(violation => violation.Sentence.ToString()));

    [Fact]
    public void Fails_for_a_device_brought_as_if_it_were_off_board() =>
        Judge.Fails(RuleIds.KnownThings, Problem, A.Rig().Bringing("echo"), "echo", "", "echo comes along but is not among the off-board things on offer.");

    [Fact]
    public void Fails_for_an_outlet_that_the_supply_lacks() =>
        Judge.Fails(RuleIds.KnownThings, Problem, A.Rig().Feeding("echo", "7"), "echo", "", "echo is hooked up to outlet 7, which the supply does not have.");

    [Fact]
    public void Fails_for_a_strange_device_on_an_outlet() =>
        Judge.Fails(RuleIds.KnownThings, Problem, A.Rig().Feeding("ghost", "1"), "ghost", "", "ghost is hooked up but is not among the devices on offer.");

    [Fact]
    public void Fails_for_a_supply_where_none_is_on_offer() =>
        Judge.Fails(RuleIds.KnownThings, A.Draft().Problem(), A.Rig().PlacingSupply(0, 0), "supply", "", "supply stands on the board as the supply but is not the supply on offer.");
}
