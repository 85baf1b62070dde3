using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class OutletVoltageRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo").Drawing(60).AtVolts(9, 12))
        .FedBy(A.Outlet("1").AtVolts(5, 9, 12, 18), A.Outlet("2").AtVolts(9))
        .Problem();

    [Theory]
    [InlineData(9)]
    [InlineData(12)]
    public void Passes_at_both_ends_of_the_range(int volts) =>
        Judge.Passes(RuleIds.OutletVoltage, Problem, A.Rig().Placing("echo", 0, 0).Feeding("echo", "1", volts));

    [Fact]
    public void Fails_above() =>
        Judge.Fails(RuleIds.OutletVoltage, Problem, A.Rig().Feeding("echo", "1", 18), "echo", "6 V", "echo gets 18 V; more than 12 V can destroy it.");

    [Fact]
    public void Fails_below() =>
        Judge.Fails(RuleIds.OutletVoltage, Problem, A.Rig().Feeding("echo", "1", 5), "echo", "4 V", "echo gets 5 V; it needs at least 9 V.");

    [Fact]
    public void A_series_pair_counts_with_its_sum() =>
        Judge.Fails(RuleIds.OutletVoltage, Problem, A.Rig().FeedingSeries("echo", 9, "1", "2"), "echo", "6 V", "echo gets 18 V; more than 12 V can destroy it.");

    [Fact]
    public void A_millivolt_too_much_is_too_much()
    {
        var problem = A.Draft().With(A.Device("echo").Drawing(60)).FedBy(A.Outlet("1") with { Volts = [9001.MilliV] }).Problem();
        Judge.Fails(RuleIds.OutletVoltage, problem, A.Rig().With(new Feed(new("echo"), ["1"], OutletJoin.Single, 9001.MilliV, [9001.MilliV])), "echo", "0.001 V", "echo gets 9.001 V; more than 9 V can destroy it.");
    }
}
