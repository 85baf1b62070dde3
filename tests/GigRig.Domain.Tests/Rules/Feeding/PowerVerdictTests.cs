using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

/// <summary>
/// Verdicts that any power check for floor devices should give, each as a whole rig before the whole rule book. The table is computed from common practice
/// rules, not published as such. Formula sources: parallel current adds and only isolated outlets may be joined (bench-supply application notes, restated);
/// series voltage adds and the lesser current counts, 24 V / 10 A + 12 V / 20 A = 36 V / 10 A (a power-supply maker's glossary); the rest is common practice.
/// </summary>
public sealed class PowerVerdictTests
{
    private static readonly Outlet Hundred = A.Outlet("1").Giving(100);

    [Fact]
    public void Nine_volts_100_mA_isolated_feeds_9_V_65_mA() =>
        Accepts([Hundred], A.Device("box").Drawing(65), rig => rig.Feeding("box", "1"));

    [Fact]
    public void Nine_volts_100_mA_isolated_does_not_feed_9_V_300_mA_alone() =>
        Refuses([Hundred], A.Device("box").Drawing(300), rig => rig.Feeding("box", "1"), RuleIds.OutletCurrent);

    [Fact]
    public void Four_paralleled_100_mA_outlets_feed_9_V_300_mA() =>
        Accepts(Four(), A.Device("box").Drawing(300), rig => rig.FeedingParallel("box", 9, "1", "2", "3", "4"));

    [Fact]
    public void Two_paralleled_100_mA_outlets_do_not() =>
        Refuses(Four(), A.Device("box").Drawing(300), rig => rig.FeedingParallel("box", 9, "1", "2"), RuleIds.OutletCurrent);

    [Fact]
    public void Nine_volts_500_mA_feeds_9_to_18_V_45_mA() =>
        Accepts([A.Outlet("1").Giving(500)], A.Device("box").Drawing(45).AtVolts(9, 18), rig => rig.Feeding("box", "1"));

    [Fact]
    public void Eighteen_volts_100_mA_does_not_feed_9_V_10_mA() =>
        Refuses([Hundred.AtVolts(18)], A.Device("box").Drawing(10), rig => rig.Feeding("box", "1", 18), RuleIds.OutletVoltage);

    [Fact]
    public void A_positive_fuzz_is_fed_from_its_own_isolated_outlet_through_a_reversing_lead() =>
        Accepts([Hundred], A.Device("box").Drawing(5, Polarity.Positive), rig => rig.Feeding("box", "1", reversed: true));

    [Fact]
    public void A_positive_fuzz_is_not_fed_without_the_reversing_lead() =>
        Refuses([Hundred], A.Device("box").Drawing(5, Polarity.Positive), rig => rig.Feeding("box", "1"), RuleIds.OutletPolarity);

    [Fact]
    public void A_positive_fuzz_is_not_fed_from_a_shared_return() => Refuses(
        [Hundred.Sharing("s"), A.Outlet("2").Sharing("s")],
        A.Device("box").Drawing(5, Polarity.Positive),
        rig => rig.Feeding("box", "1", reversed: true),
        RuleIds.IsolatedOutlet);

    [Fact]
    public void Five_thirty_55_and_65_mA_share_200_mA()
    {
        var draws = new[] { 5, 30, 55, 65 };
        var boxes = draws.Select(draw => A.Device($"box{draw}").Sized(60, 100).Drawing(draw)).ToArray();
        var problem = A.Draft().With(boxes).FedBy(A.Outlet("1").Giving(200).Sharing("s"), A.Outlet("2").Sharing("s")).OwningAdapters(splitter: 3).Problem();
        var rig = draws.Aggregate(A.Rig(), (rig, draw) => rig.Placing($"box{draw}", 100 * rig.Placements.Count, 0).Feeding($"box{draw}", "1"));

        Assert.Empty(RuleBook.Check(problem, rig));
    }

    [Fact]
    public void Two_isolated_9_V_100_mA_in_series_feed_18_V_90_mA() =>
        Accepts(Four(), A.Device("box").Drawing(90).AtVolts(18, 18), rig => rig.FeedingSeries("box", 9, "1", "2"));

    [Fact]
    public void Two_shared_outlets_in_series_do_not() => Refuses(
        [Hundred.Sharing("s"), A.Outlet("2").Sharing("s")],
        A.Device("box").Drawing(90).AtVolts(18, 18),
        rig => rig.FeedingSeries("box", 9, "1", "2"),
        RuleIds.OutletJoining);

    [Fact]
    public void Twelve_volts_AC_800_mA_does_not_feed_12_V_DC_200_mA() => Refuses(
        [A.Outlet("1").AtVolts(12).Giving(800).Alternating()],
        A.Device("box").Drawing(200).AtVolts(12, 12),
        rig => rig.Feeding("box", "1", 12),
        RuleIds.OutletKind);

    private static Outlet[] Four() => [.. Enumerable.Range(1, 4).Select(i => A.Outlet($"{i}").Giving(100))];

    private static void Accepts(Outlet[] outlets, Device box, Func<Rig, Rig> hookUp) => Assert.Empty(Verdict(outlets, box, hookUp));

    private static void Refuses(Outlet[] outlets, Device box, Func<Rig, Rig> hookUp, string ruleId) =>
        Assert.Contains(ruleId, Verdict(outlets, box, hookUp).Select(violation => violation.RuleId));

    /// <summary>With every adapter lead owned, so that only the electricity can refuse.</summary>
    private static ValueList<Violation> Verdict(Outlet[] outlets, Device box, Func<Rig, Rig> hookUp)
    {
        var problem = A.Draft().With(box).FedBy(outlets).OwningAdapters(9, 9, 9, 9).Problem();
        return RuleBook.Check(problem, hookUp(A.Rig().Placing("box", 0, 0)));
    }
}
