using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Playing;

public sealed class DeviceLimitRuleTests
{
    private static readonly RigProblem Problem = A.Draft().With(A.Device("a"), A.Device("b"), A.Device("c")).With(A.OffBoard("clip")).Limited(devices: 2).Problem();

    [Fact]
    public void Passes_at_the_limit_whatever_comes_beside_the_board() =>
        Judge.Passes(RuleIds.DeviceLimit, Problem, A.Rig().Placing("a", 0, 0).Placing("b", 200, 0).Bringing("clip"));

    [Fact]
    public void Fails_above() =>
        Judge.Fails(RuleIds.DeviceLimit, Problem, A.Rig().Placing("a", 0, 0).Placing("b", 200, 0).Placing("c", 400, 0), "", "1 device", "There are 3 devices on the board; night allows 2.");
}
