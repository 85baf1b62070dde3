using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class DevicesFedRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo").Drawing(60), A.Device("fuzz").Drawing(5).OnBatteryToo(), A.Device("passive"))
        .FedBy(A.Outlet("1"), A.Outlet("2"))
        .Problem();

    [Fact]
    public void Passes_on_an_outlet_on_a_battery_and_for_a_passive_device() =>
        Judge.Passes(RuleIds.DevicesFed, Problem, A.Rig().Placing("echo", 0, 0).Placing("fuzz", 200, 0).Placing("passive", 400, 0).Feeding("echo", "1").OnBattery("fuzz"));

    [Fact]
    public void A_device_that_has_a_battery_may_use_an_outlet() =>
        Judge.Passes(RuleIds.DevicesFed, Problem, A.Rig().Placing("fuzz", 0, 0).Feeding("fuzz", "1"));

    [Fact]
    public void Fails_for_a_device_that_is_not_hooked_up() =>
        Judge.Fails(RuleIds.DevicesFed, Problem, A.Rig().Placing("echo", 0, 0), "echo", "", "echo needs 60 mA and is not hooked up.");

    [Fact]
    public void Even_a_battery_must_be_said() => Judge.Fails(RuleIds.DevicesFed, Problem, A.Rig().Placing("fuzz", 0, 0));

    [Fact]
    public void Fails_for_a_device_hooked_up_twice() =>
        Judge.Fails(RuleIds.DevicesFed, Problem, A.Rig().Placing("echo", 0, 0).Feeding("echo", "1").Feeding("echo", "2"), "echo", "1", "echo is hooked up 2 times.");

    [Fact]
    public void Fails_for_a_battery_in_a_device_that_takes_none() =>
        Judge.Fails(RuleIds.DevicesFed, Problem, A.Rig().Placing("echo", 0, 0).OnBattery("echo"), "echo", "", "echo is to run on a battery but cannot.");

    [Fact]
    public void Fails_for_a_passive_device_on_an_outlet() =>
        Judge.Fails(RuleIds.DevicesFed, Problem, A.Rig().Placing("passive", 0, 0).Feeding("passive", "1"), "passive", "", "passive takes no power but is hooked up.");

    [Fact]
    public void Fails_for_a_device_left_at_home_but_hooked_up() =>
        Judge.Fails(RuleIds.DevicesFed, Problem, A.Rig().Feeding("echo", "1"), "echo", "", "echo is hooked up but not on the board.");
}
