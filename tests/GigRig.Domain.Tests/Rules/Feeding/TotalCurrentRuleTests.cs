using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class TotalCurrentRuleTests
{
    [Fact]
    public void Passes_up_to_the_total_and_fails_beyond()
    {
        var rig = A.Rig().Feeding("a", "1").Feeding("b", "2");
        Judge.Passes(RuleIds.TotalCurrent, Totalling(150), rig);
        Judge.Fails(RuleIds.TotalCurrent, Totalling(149), rig, "supply", "1 mA", "The outlets in use give 150 mA; supply gives 149 mA in all.");
    }

    [Fact]
    public void In_parallel_a_draw_counts_once()
    {
        Judge.Passes(RuleIds.TotalCurrent, Totalling(90), A.Rig().FeedingParallel("a", 9, "1", "2"));
        Judge.Fails(RuleIds.TotalCurrent, Totalling(89), A.Rig().FeedingParallel("a", 9, "1", "2"));
    }

    [Fact]
    public void In_series_a_draw_counts_on_both_outlets()
    {
        Judge.Passes(RuleIds.TotalCurrent, Totalling(180), A.Rig().FeedingSeries("a", 9, "1", "2"));
        Judge.Fails(RuleIds.TotalCurrent, Totalling(179), A.Rig().FeedingSeries("a", 9, "1", "2"));
    }

    [Fact]
    public void A_battery_costs_nothing() =>
        Judge.Passes(RuleIds.TotalCurrent, Totalling(60), A.Rig().OnBattery("a").Feeding("b", "2"));

    private static RigProblem Totalling(int milliamps) => A.Draft()
        .With(A.Device("a").Drawing(90).AtVolts(9, 18).OnBatteryToo(), A.Device("b").Drawing(60))
        .FedBy(A.Supply(A.Outlet("1"), A.Outlet("2")).Totalling(milliamps))
        .Problem();
}
