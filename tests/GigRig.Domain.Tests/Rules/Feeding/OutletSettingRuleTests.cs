using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class OutletSettingRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo").Drawing(60).AtVolts(9, 18))
        .FedBy(A.Outlet("1").AtVolts(9, 12), A.Outlet("2"))
        .Problem();

    [Theory]
    [InlineData(9)]
    [InlineData(12)]
    public void Passes_for_a_voltage_the_outlet_offers(int volts) =>
        Judge.Passes(RuleIds.OutletSetting, Problem, A.Rig().Placing("echo", 0, 0).Feeding("echo", "1", volts));

    [Fact]
    public void Fails_for_one_between() =>
        Judge.Fails(RuleIds.OutletSetting, Problem, A.Rig().Placing("echo", 0, 0).Feeding("echo", "1", 10), "echo", "10 V", "Outlet 1 feeds echo at 10 V; it can be set to 9 V and 12 V only.");

    [Fact]
    public void Fails_where_the_volts_said_to_arrive_are_not_what_the_settings_give() =>
        Judge.Fails(RuleIds.OutletSetting, Problem, A.Rig().With(new Feed(new("echo"), ["1"], OutletJoin.Single, 12.V, [9.V])), "echo", "12 V", "echo is said to get 12 V; its outlets give 9 V.");

    [Fact]
    public void In_series_the_settings_add_up()
    {
        Judge.Passes(RuleIds.OutletSetting, Problem, A.Rig().With(new Feed(new("echo"), ["1", "2"], OutletJoin.Series, 21.V, [12.V, 9.V])));
        Judge.Fails(RuleIds.OutletSetting, Problem, A.Rig().With(new Feed(new("echo"), ["1", "2"], OutletJoin.Series, 12.V, [12.V, 9.V])));
    }

    [Fact]
    public void Fails_for_an_outlet_without_a_setting() =>
        Judge.Fails(RuleIds.OutletSetting, Problem, A.Rig().With(new Feed(new("echo"), ["1", "2"], OutletJoin.Parallel, 9.V, [9.V])), "echo", "", "echo has 2 outlets but 1 setting.");

    [Fact]
    public void On_battery_there_is_nothing_to_set() => Judge.Passes(RuleIds.OutletSetting, Problem, A.Rig().OnBattery("echo"));
}
