using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class SwitchSpacingRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo").WithSwitch(50, 20), A.Device("hall").WithSwitch(50, 20).Turning(Turn.None, Turn.Half), A.Device("bare"))
        .SpacingSwitches(130)
        .Problem();

    [Fact]
    public void Passes_at_the_least_distance_measured_straight() =>
        // 120 across and 50 along make 130 (5-12-13).
        Judge.Passes(RuleIds.SwitchSpacing, Problem, A.Rig().Placing("echo", 0, 0).Placing("hall", 120, 50));

    [Fact]
    public void Fails_a_little_nearer() =>
        Judge.Fails(RuleIds.SwitchSpacing, Problem, A.Rig().Placing("echo", 0, 0).Placing("hall", 120, 49), "echo hall", "1 mm", "Switches of echo and hall are 129 mm apart; 130 mm are asked for.");

    [Fact]
    public void Switches_are_where_the_turned_body_has_them() =>
        Judge.Passes(RuleIds.SwitchSpacing, Problem, A.Rig().Placing("echo", 0, 0).Placing("hall", 110, 10, Turn.Half));

    [Fact]
    public void Devices_without_switches_stand_as_near_as_they_like() =>
        Judge.Passes(RuleIds.SwitchSpacing, Problem, A.Rig().Placing("echo", 0, 0).Placing("bare", 100, 0));

    [Fact]
    public void Switches_of_one_device_are_not_compared() =>
        Judge.Passes(RuleIds.SwitchSpacing, A.Draft().With(A.Device("twin").WithSwitch(20, 20).WithSwitch(80, 20)).SpacingSwitches(100).Problem(), A.Rig().Placing("twin", 0, 0));

    [Fact]
    public void Zero_turns_the_rule_off() =>
        Judge.Passes(RuleIds.SwitchSpacing, A.Draft().With(A.Device("a").WithSwitch(50, 20), A.Device("b").WithSwitch(50, 20)).Problem(), A.Rig().Placing("a", 0, 0).Placing("b", 0, 0));
}
