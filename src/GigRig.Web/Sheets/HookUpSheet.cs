using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Web.Sheets;

/// <summary>How one device gets its power, in words.</summary>
/// <param name="Number">As in the drawing; null where it stands nowhere.</param>
/// <param name="Outlet">Such as <c>outlet 3</c>, <c>outlets 1 + 2 in series</c> or <c>own battery</c>.</param>
/// <param name="Tag">The same, short enough for the drawing: <c>3: 9 V</c>.</param>
/// <param name="Volts">What arrives; empty on battery.</param>
/// <param name="Lead">Which power lead it takes, with what it shares.</param>
public sealed record HookUpLine(GearId Device, int? Number, string DeviceName, string Outlet, string Tag, string Volts, string Draw, string Lead);

/// <summary>Outlet by outlet, what feeds what.</summary>
public sealed record HookUpSheet(ValueList<HookUpLine> Lines)
{
    public static HookUpSheet Of(RigProblem problem, Rig rig)
    {
        var numbers = RigNumbers.Of(rig);
        return new(rig.HookUp.Select(feed => LineOf(problem, rig, feed, numbers)).OrderBy(line => line.Number ?? int.MaxValue).ToValueList());
    }

    private static HookUpLine LineOf(RigProblem problem, Rig rig, Feed feed, IReadOnlyDictionary<GearId, int> numbers) => new(
        feed.Device,
        numbers.TryGetValue(feed.Device, out var number) ? number : null,
        problem.NameOf(feed.Device),
        OutletOf(feed),
        feed.OnBattery ? "battery" : $"{string.Join('+', feed.Outlets)}: {feed.Volts}",
        feed.OnBattery ? "" : VoltsOf(feed),
        problem.FindDevice(feed.Device)?.Power?.Current.ToString() ?? "",
        LeadOf(problem, rig, feed));

    private static string OutletOf(Feed feed) => (feed.OnBattery, feed.Join) switch
    {
        (true, _) => "own battery",
        (_, OutletJoin.Parallel) => $"outlets {string.Join(" + ", feed.Outlets)} joined in parallel",
        (_, OutletJoin.Series) => $"outlets {string.Join(" + ", feed.Outlets)} joined in series",
        _ => $"outlet {feed.Outlets[0]}",
    };

    private static string VoltsOf(Feed feed) =>
        feed.Join == OutletJoin.Series ? $"{string.Join(" + ", feed.Settings)} = {feed.Volts}" : feed.Volts.ToString();

    private static string LeadOf(RigProblem problem, Rig rig, Feed feed)
    {
        if (feed.OnBattery)
            return "none; fit a fresh battery";
        var parts = new List<string> { KindOf(problem, feed) };
        if (feed.Join == OutletJoin.Parallel)
            parts.Add("parallel lead");
        if (feed.Join == OutletJoin.Series)
            parts.Add("series lead");
        var others = rig.HookUp.Where(other => other.Device != feed.Device && other.Outlets.Intersect(feed.Outlets).Any()).Select(other => problem.NameOf(other.Device)).ToList();
        if (others.Count > 0)
            parts.Add($"splitter shared with {string.Join(", ", others)}");
        return string.Join("; ", parts);
    }

    private static string KindOf(RigProblem problem, Feed feed) => problem.FindDevice(feed.Device)?.Power switch
    {
        { Type: CurrentType.Ac } => "AC power lead",
        { Polarity: Polarity.Positive } => feed.Reversed ? "polarity-reversing lead, centre positive at the device" : "DC power lead, centre positive",
        { } => feed.Reversed ? "polarity-reversing lead, centre negative at the device" : "DC power lead, centre negative",
        null => "power lead",
    };
}
