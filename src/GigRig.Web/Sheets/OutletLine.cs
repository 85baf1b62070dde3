using System.Globalization;
using GigRig.Domain;
using GigRig.Domain.Formulas;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;

namespace GigRig.Web.Sheets;

/// <summary>One outlet in use, or several joined ones, in words.</summary>
/// <param name="Label">As on the supply: <c>3</c>, <c>1 + 2</c>.</param>
/// <param name="Kind">Isolated or with whom it shares its return; how it is joined.</param>
/// <param name="Volts">What to set and what arrives.</param>
/// <param name="Feeds">Whom, each with its lead.</param>
/// <param name="Through">What sits between outlet and leads: a splitter, a join lead; else empty.</param>
/// <param name="Left">What can still be drawn of how much, or by how much too much is; headroom included.</param>
/// <param name="Lost">What the lead loses, where that matters; else empty.</param>
public sealed record OutletLine(string Label, string Kind, string Volts, ValueList<HookUpLine> Feeds, string Through, string Left, string Lost)
{
    // Half a metre of 24 AWG is what boards are fed through: common practice, no source. So is the 2 % from which it is told.
    private const double LeadMetres = 0.5;
    private const double LostPartToTell = 0.02;

    public static OutletLine Of(RigProblem problem, OutletLoad load, IEnumerable<HookUpLine> lines) => new(
        string.Join(" + ", load.Outlets.Select(outlet => outlet.Id)),
        KindOf(problem.Supply!, load),
        VoltsOf(load),
        lines.Where(line => load.Devices.Contains(line.Device)).ToValueList(),
        ThroughOf(load),
        load.Draw > load.Gives ? $"{load.Draw - load.Gives} too much for {load.Gives}" : $"{load.Left.Value} of {load.Gives}",
        LostOf(load));

    private static string KindOf(Supply supply, OutletLoad load) => load.Join switch
    {
        OutletJoin.Parallel => "joined in parallel: currents add",
        OutletJoin.Series => "joined in series: volts add, the lesser current counts",
        _ when supply.IsIsolated(load.Outlets[0]) => "isolated",
        _ => $"shares its return with {string.Join(", ", supply.Outlets.Where(other => other.Group == load.Outlets[0].Group && other != load.Outlets[0]).Select(other => other.Id))}",
    };

    private static string VoltsOf(OutletLoad load)
    {
        var set = load.Outlets.Any(outlet => outlet.Volts.Count > 1) ? "set to " : "";
        return load.Join switch
        {
            OutletJoin.Series => $"{set}{string.Join(" + ", load.Settings)} = {load.Volts}",
            OutletJoin.Parallel => $"{set}{load.Volts}{(set.Length > 0 ? " each" : "")}",
            _ => $"{set}{string.Join(" and ", load.Settings)}",
        } + (load.Outlets[0].Type == CurrentType.Ac ? " AC" : "");
    }

    private static string ThroughOf(OutletLoad load) => (load.Join, load.Devices.Count) switch
    {
        (OutletJoin.Parallel, _) => $"{(load.Outlets.Count - 1).Counted("parallel lead")}; only where the supply's maker allows it",
        (OutletJoin.Series, _) => "1 series lead; only where the supply's maker allows it",
        (_, > 1) => $"{(load.Devices.Count - 1).Counted("splitter")}: {load.Devices.Count} devices share this outlet",
        _ => "",
    };

    private static string LostOf(OutletLoad load)
    {
        var amps = load.Draw.Value / 1000.0 / (load.Join == OutletJoin.Parallel ? load.Outlets.Count : 1);
        var (lost, given) = (PowerLeadDrop.Volts(LeadMetres, PowerLeadDrop.Awg24, amps), load.Volts.Value / 1000.0);
        return given > 0 && PowerLeadDrop.Part(lost, given) > LostPartToTell
            ? string.Create(CultureInfo.InvariantCulture, $"about {lost:0.0} V ({PowerLeadDrop.Part(lost, given):0 %}) is lost in the lead, if it is {LeadMetres} m of 24 AWG: take a short, thick one")
            : "";
    }
}
