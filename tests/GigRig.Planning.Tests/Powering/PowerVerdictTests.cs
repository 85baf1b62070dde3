using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Planning.Powering;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Powering;

/// <summary>
/// The verdicts a power check for floor devices should give, each asked of the power search alone and of the whole planner. Computed from common-practice rules;
/// the formulas are published in bench-supply notes: isolated outlets in parallel add their currents, outlets in series add their volts while the lesser current
/// counts (24 V / 10 A and 12 V / 20 A make 36 V / 10 A).
/// </summary>
public sealed class PowerVerdictTests
{
    private static readonly PowerAdapters All = new(9, 9, 9, 9);

    public static TheoryData<string, Outlet[], PowerNeed[], PowerAdapters, bool> Verdicts { get; } = new()
    {
        { "9 V 100 mA isolated feeds 9 V 65 mA", [A.Outlet("1")], [Need(9, 9, 65)], PowerAdapters.None, true },
        { "9 V 100 mA isolated does not feed 9 V 300 mA alone", [A.Outlet("1")], [Need(9, 9, 300)], All, false },
        { "four of them in parallel do", Four(), [Need(9, 9, 300)], new(Parallel: 3), true },
        { "so do three, but two do not", Four()[..2], [Need(9, 9, 300)], All, false },
        { "9 V 500 mA isolated feeds 9 to 18 V 45 mA", [A.Outlet("1").Giving(500)], [Need(9, 18, 45)], PowerAdapters.None, true },
        { "18 V does not feed 9 V: over-voltage", [A.Outlet("1").AtVolts(18)], [Need(9, 9, 10)], All, false },
        { "9 V negative feeds a positive fuzz on its own isolated outlet through a reversing lead", [A.Outlet("1")], [Fuzz], new(Reverse: 1), true },
        { "not without the lead", [A.Outlet("1")], [Fuzz], PowerAdapters.None, false },
        { "not from a shared return", [A.Outlet("1").Sharing("s"), A.Outlet("2").Sharing("s")], [Fuzz], All, false },
        { "not beside another on one outlet", [A.Outlet("1")], [Fuzz, Need(9, 9, 5)], All, false },
        { "9 V 200 mA shared feeds 5, 30, 55 and 65 mA", [A.Outlet("1").Giving(200).Sharing("s")], [Need(9, 9, 5), Need(9, 9, 30), Need(9, 9, 55), Need(9, 9, 65)], new(Splitter: 3), true },
        { "with 46 mA more it does not", [A.Outlet("1").Giving(200).Sharing("s")], [Need(9, 9, 5), Need(9, 9, 30), Need(9, 9, 55), Need(9, 9, 65), Need(9, 9, 46)], All, false },
        { "two 9 V 100 mA isolated in series feed 18 V 90 mA", Four()[..2], [Need(18, 18, 90)], new(Series: 1), true },
        { "in series from shared jacks they do not", [A.Outlet("1").Sharing("s"), A.Outlet("2").Sharing("s")], [Need(18, 18, 90)], All, false },
        { "12 V AC 800 mA does not feed 12 V DC 200 mA", [A.Outlet("1").AtVolts(12).Giving(800).Alternating()], [Need(12, 12, 200)], All, false },
        { "24 V 10 A and 12 V 20 A in series feed 36 V 10 A", [A.Outlet("1").AtVolts(24).Giving(10_000), A.Outlet("2").AtVolts(12).Giving(20_000)], [Need(36, 36, 10_000)], new(Series: 1), true },
        { "but not 36 V 10.001 A", [A.Outlet("1").AtVolts(24).Giving(10_000), A.Outlet("2").AtVolts(12).Giving(20_000)], [Need(36, 36, 10_001)], All, false },
    };

    private static PowerNeed Fuzz => Need(9, 9, 5) with { Polarity = Polarity.Positive };

    [Theory]
    [MemberData(nameof(Verdicts))]
    public void The_power_search_says_so(string verdict, Outlet[] outlets, PowerNeed[] needs, PowerAdapters adapters, bool isFed)
    {
        var classes = OutletClass.Of(A.Supply(outlets));
        var patterns = new FeedPatterns(classes, adapters);
        var consumers = needs.Select((need, i) => new Consumer(new($"{i}"), need, need.Current.Value, patterns.For(need, need.Current.Value))).ToList();

        var answer = new PowerSearch(classes, adapters, totalCurrent: null).Feed(consumers, Ask.Patiently);

        Assert.True(isFed == answer is PowerAnswer.Fed, verdict);
    }

    [Theory]
    [MemberData(nameof(Verdicts))]
    public async Task The_planner_says_so(string verdict, Outlet[] outlets, PowerNeed[] needs, PowerAdapters adapters, bool isFed)
    {
        var boxes = needs.Select((need, i) => A.Device($"box{i}").Doing($"role{i}") with { Power = need }).ToArray();
        var draft = A.Draft(A.Board(600, 300)).With(boxes).FedBy(outlets).Needing([.. boxes.Select(box => box.Functions[0].Role.Key)]) with { Adapters = adapters };

        var outcome = await Ask.Planner(draft);

        Assert.True(isFed ? outcome is PlanOutcome.Proposed { Proven: true } : outcome is PlanOutcome.Impossible, verdict);
    }

    private static PowerNeed Need(int min, int max, int current) => new(min.V, max.V, current.MilliA);

    private static Outlet[] Four() => [.. Enumerable.Range(1, 4).Select(i => A.Outlet($"{i}").Giving(100))];
}
