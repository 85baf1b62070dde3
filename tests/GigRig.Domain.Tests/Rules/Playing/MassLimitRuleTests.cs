using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Playing;

public sealed class MassLimitRuleTests
{
    private static readonly Rig Rig = A.Rig().Placing("echo", 0, 0).Bringing("clip");

    [Fact]
    public void Passes_at_the_limit() => Judge.Passes(RuleIds.MassLimit, Limited(18_550), Rig);

    [Fact]
    public void Fails_a_gram_above() =>
        Judge.Fails(RuleIds.MassLimit, Limited(18_549), Rig, "", "1 g", "All that is carried weighs 18550 g; night allows 18549 g.");

    /// <summary>2000 g of board, 1000 of supply, 15 000 of amp, 500 of device, 50 off the board.</summary>
    private static RigProblem Limited(int grams) =>
        A.Draft().FedBy(A.Supply()).Through(A.Amp()).With(A.Device("echo"), A.Device("spare")).With(A.OffBoard("clip")).Limited(mass: grams).Problem();
}
