using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class LidRuleTests
{
    private static readonly RigProblem Problem = A.Draft(A.Board().Clearing(over: 60))
        .With(A.Device("low").Sized(70, 120, 60), A.Device("wah").Sized(100, 250, 75))
        .Problem();

    [Fact]
    public void Passes_up_to_the_lid() => Judge.Passes(RuleIds.Lid, Problem, A.Rig().Placing("low", 0, 0));

    [Fact]
    public void Passes_without_a_lid() =>
        Judge.Passes(RuleIds.Lid, A.Draft().With(A.Device("tower").Sized(70, 120, 3000)).Problem(), A.Rig().Placing("tower", 0, 0));

    [Fact]
    public void Fails_for_a_device_that_is_too_high() =>
        Judge.Fails(RuleIds.Lid, Problem, A.Rig().Placing("wah", 0, 0), "wah", "15 mm", "wah is 75 mm high; the lid leaves 60 mm.");
}
