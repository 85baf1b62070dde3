using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Playing;

public sealed class PinsRuleTests
{
    private static readonly RigProblem Problem = A.Draft().With(A.Device("echo")).With(A.OffBoard("clip")).Pinning("echo", "clip").Problem();

    [Fact]
    public void Passes_where_all_pinned_things_come_along() => Judge.Passes(RuleIds.Pins, Problem, A.Rig().Placing("echo", 0, 0).Bringing("clip"));

    [Fact]
    public void Passes_for_a_pinned_amp_since_an_amp_always_comes_along() =>
        Judge.Passes(RuleIds.Pins, A.Draft().Through(A.Amp()).Pinning("amp").Problem(), A.Rig());

    [Fact]
    public void Fails_for_one_left_at_home() =>
        Judge.Fails(RuleIds.Pins, Problem, A.Rig().Placing("echo", 0, 0), "clip", "", "clip is pinned but does not come along.");
}
