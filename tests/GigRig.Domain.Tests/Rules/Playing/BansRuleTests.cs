using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Playing;

public sealed class BansRuleTests
{
    private static readonly RigProblem Problem = A.Draft().With(A.Device("echo")).With(A.OffBoard("clip")).Banning("echo", "clip").Problem();

    [Fact]
    public void Passes_where_banned_things_stay_at_home() => Judge.Passes(RuleIds.Bans, Problem, A.Rig());

    [Fact]
    public void Fails_for_one_that_comes_along() =>
        Judge.Fails(RuleIds.Bans, Problem, A.Rig().Placing("echo", 0, 0), "echo", "", "echo is banned but comes along.");
}
