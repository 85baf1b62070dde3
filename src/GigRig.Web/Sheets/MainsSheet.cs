using System.Globalization;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Sheets;

/// <summary>One thing with a mains plug, in words.</summary>
/// <param name="Takes">What its label says.</param>
/// <param name="There">What that means at the venue.</param>
/// <param name="Dangerous">Whether plugging it in would be wrong.</param>
public sealed record MainsSheetLine(string Name, string Takes, string There, bool Dangerous);

/// <summary>What goes into the wall, in words. No lines where nothing with a plug comes along.</summary>
/// <param name="Sockets">How many sockets are needed, for how many watts.</param>
/// <param name="Venue">What comes out of the wall there; empty where nobody said.</param>
public sealed record MainsSheet(string Sockets, string Venue, ValueList<MainsSheetLine> Lines)
{
    /// <summary>What the verdicts on voltage and plug rest on; rules of thumb.</summary>
    public static string Basis { get; } = string.Create(
        CultureInfo.InvariantCulture,
        $"Rules of thumb: up to {MainsPlan.Tolerance:0 %} off counts as the right voltage (from memory), which plug goes into which socket is common practice. The label has the last word.");

    public static MainsSheet Of(RigProblem problem)
    {
        var plan = MainsPlan.Of(problem);
        var sockets = plan.Lines.Count == 1 ? "1 mains socket" : $"{plan.Lines.Count} mains sockets";
        return new(
            plan.Watts is { } watts and > 0 ? $"{sockets}, {watts} W in all" : sockets,
            VenueOf(plan.Venue),
            plan.Lines.Select(line => new MainsSheetLine(problem.NameOf(line.Thing), TakesOf(line.Input), ThereOf(line, plan.Venue), line.Voltage is MainsVoltage.TooHigh or MainsVoltage.TooLow)).ToValueList());
    }

    /// <summary>Which plug adapters to bring, with how many of each.</summary>
    public static IEnumerable<PackLine> Adapters(RigProblem problem)
    {
        var plan = MainsPlan.Of(problem);
        return plan.Lines.Where(line => line.Fit == MainsFit.NeedsAdapter).GroupBy(line => line.Input.Plug)
            .Select(plugs => new PackLine(plugs.Count(), $"mains plug adapter, {plugs.Key} to {plan.Venue.Socket}"));
    }

    private static string VenueOf(VenueMains venue) => (venue.Volts, venue.Socket) switch
    {
        (null, null) => "",
        ({ } volts, null) => $"{volts} V, sockets not said",
        (null, { } socket) => $"type {socket} sockets, voltage not said",
        ({ } volts, { } socket) => $"{volts} V, type {socket} sockets",
    };

    private static string TakesOf(MainsInput input)
    {
        var volts = input.Least is not { } least ? "voltage not said" : input.Most is { } most && most != least ? $"{least}–{most} V" : $"{least} V";
        return string.Join(", ", new[] { volts, input.Watts is { } watts ? $"{watts} W" : null, input.Plug is { } plug ? $"type {plug} plug" : "plug not said" }.OfType<string>());
    }

    private static string ThereOf(MainsLine line, VenueMains venue)
    {
        var voltage = line.Voltage switch
        {
            MainsVoltage.TooHigh => $"Do not plug it in: {venue.Volts} V can burn it. Bring one made for {venue.Volts} V, or a transformer rated for it",
            MainsVoltage.TooLow => $"Do not plug it in: {venue.Volts} V is too little for it. Bring one made for {venue.Volts} V, or a transformer rated for it",
            MainsVoltage.Right => "voltage fits",
            _ => "look at its label for the voltage",
        };
        return line.Fit switch
        {
            MainsFit.NeedsAdapter => $"{voltage}; an adapter from plug {line.Input.Plug} to socket {venue.Socket} that carries the protective earth",
            MainsFit.Fits => $"{voltage}; plug fits",
            _ => voltage,
        };
    }
}
