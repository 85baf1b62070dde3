using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Playing;

public sealed class MustsCoveredRuleTests
{
    private static readonly RigProblem Problem = A.Draft().With(A.Device("echo").Doing("delay.tape"), A.Device("wide").Doing("drive"))
        .Needing("delay").Wanting("reverb").Problem();

    [Fact]
    public void Passes_where_a_narrower_role_meets_the_need_and_a_want_goes_without() =>
        Judge.Passes(RuleIds.MustsCovered, Problem, A.Rig().Placing("echo", 0, 0));

    [Fact]
    public void Fails_for_a_must_that_nothing_does() =>
        Judge.Fails(RuleIds.MustsCovered, Problem, A.Rig(), "", "", "Nothing in the rig does Delay, which night must have.");

    [Fact]
    public void A_wider_role_does_not_meet_a_narrower_need() =>
        Judge.Fails(RuleIds.MustsCovered, A.Draft().With(A.Device("wide").Doing("drive")).Needing("drive.high").Problem(), A.Rig().Placing("wide", 0, 0));
}
