using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;

namespace GigRig.Web.Sheets;

/// <summary>How one device gets its power, in words.</summary>
/// <param name="Number">As in the drawing; null where it stands nowhere.</param>
/// <param name="Outlet">Such as <c>outlet 3</c>, <c>outlets 1 + 2 in series</c> or <c>own battery</c>.</param>
/// <param name="Tag">The same, short enough for the drawing: <c>3: 9 V</c>.</param>
/// <param name="Volts">What arrives; empty on battery.</param>
/// <param name="Lead">Which power lead it takes.</param>
public sealed record HookUpLine(GearId Device, int? Number, string DeviceName, string Outlet, string Tag, string Volts, string Draw, string Lead)
{
    /// <summary>As it goes by in the lists.</summary>
    public string Title => Number is { } number ? $"{number} {DeviceName}" : DeviceName;
}

/// <summary>What feeds what: device by device for the drawing, outlet by outlet and battery by battery for building.</summary>
/// <param name="Lines">One for each hooked-up device.</param>
/// <param name="Outlets">Those in use, in the supply's order.</param>
/// <param name="Free">Those out of use, in words.</param>
/// <param name="InAll">What is left of the supply as a whole; empty without one.</param>
public sealed record HookUpSheet(ValueList<HookUpLine> Lines, ValueList<OutletLine> Outlets, string Free, string InAll, ValueList<BatteryLine> Batteries)
{
    public static HookUpSheet Of(RigProblem problem, Rig rig)
    {
        var numbers = RigNumbers.Of(rig);
        var lines = rig.HookUp.Select(feed => LineOf(problem, feed, numbers)).OrderBy(line => line.Number ?? int.MaxValue).ToValueList();
        var load = SupplyLoad.Of(problem, rig);
        return new(
            lines,
            load.Outlets.Select(outlet => OutletLine.Of(problem, outlet, lines)).ToValueList(),
            FreeOf(load),
            InAllOf(problem, load),
            lines.Where(line => rig.HookUp.Any(feed => feed.OnBattery && feed.Device == line.Device)).Select(line => BatteryLine.Of(problem, line)).ToValueList());
    }

    private static HookUpLine LineOf(RigProblem problem, Feed feed, IReadOnlyDictionary<GearId, int> numbers) => new(
        feed.Device,
        numbers.TryGetValue(feed.Device, out var number) ? number : null,
        problem.NameOf(feed.Device),
        OutletOf(feed),
        feed.OnBattery ? "battery" : $"{string.Join('+', feed.Outlets)}: {feed.Volts}",
        feed.OnBattery ? "" : VoltsOf(feed),
        problem.FindDevice(feed.Device)?.Power?.Current.ToString() ?? "",
        LeadOf(problem, feed));

    /// <summary>Alike ones together: <c>4, 5, 6 (9 V, 100 mA each); 8 (9 V / 12 V, 500 mA)</c>.</summary>
    private static string FreeOf(SupplyLoad load) => string.Join("; ", load.Unused
        .GroupBy(outlet => $"{string.Join(" / ", outlet.Volts)}, {outlet.Current}")
        .Select(alike => $"{string.Join(", ", alike.Select(outlet => outlet.Id))} ({alike.Key}{(alike.Skip(1).Any() ? " each" : "")})"));

    private static string OutletOf(Feed feed) => (feed.OnBattery, feed.Join) switch
    {
        (true, _) => "own battery",
        (_, OutletJoin.Parallel) => $"outlets {string.Join(" + ", feed.Outlets)} joined in parallel",
        (_, OutletJoin.Series) => $"outlets {string.Join(" + ", feed.Outlets)} joined in series",
        _ => $"outlet {feed.Outlets[0]}",
    };

    private static string VoltsOf(Feed feed) =>
        feed.Join == OutletJoin.Series ? $"{string.Join(" + ", feed.Settings)} = {feed.Volts}" : feed.Volts.ToString();

    private static string LeadOf(RigProblem problem, Feed feed) => (feed.OnBattery, problem.FindDevice(feed.Device)?.Power) switch
    {
        (true, _) => "none; fit a fresh battery",
        (_, { Type: CurrentType.Ac }) => "AC power lead",
        (_, { Polarity: Polarity.Positive }) => feed.Reversed ? "polarity-reversing lead, centre positive at the device" : "DC power lead, centre positive",
        (_, { }) => feed.Reversed ? "polarity-reversing lead, centre negative at the device" : "DC power lead, centre negative",
        (_, null) => "power lead",
    };

    private static string InAllOf(RigProblem problem, SupplyLoad load)
    {
        if (problem.Supply is null)
            return "";
        var left = load.Taken > load.Gives ? $"{load.Taken - load.Gives} too much" : $"{load.Left} left";
        var headroom = problem.Options.Headroom > 0 ? $", {problem.Options.Headroom * 100:0.#} % headroom counted" : "";
        return $"{load.Taken} of {load.Gives} taken, {left}{headroom}";
    }
}
