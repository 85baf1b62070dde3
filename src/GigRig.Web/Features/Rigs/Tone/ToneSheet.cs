using System.Globalization;
using GigRig.Domain;
using GigRig.Domain.Formulas;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.Web.Shared;

namespace GigRig.Web.Features.Rigs.Tone;

/// <summary>One way to wire the instrument, in words.</summary>
/// <param name="Moved">Against the short lead.</param>
public sealed record ToneRow(ToneWay Way, string Name, string Drives, string Load, string Resonance, string Moved);

/// <summary>The tone of the long lead in words.</summary>
/// <param name="Story">What hangs on the pickup.</param>
/// <param name="Remedies">What this rig could do about it.</param>
/// <param name="Assumed">Values nobody entered, with where they come from.</param>
public sealed record ToneSheet(string Story, ValueList<ToneRow> Rows, ValueList<string> Remedies, ValueList<string> Assumed)
{
    /// <summary>Behind a buffer the lead hardly matters, even a long one of the worst cable.</summary>
    public static string BehindBuffer { get; } = string.Create(
        CultureInfo.InvariantCulture,
        $"Behind a buffer length hardly matters: driven by {LeadTone.Buffer} Ω, even 12 m of {LeadTone.MostCable} pF/m lose nothing below {Corner.Hertz(LeadTone.Buffer, (double)CableCapacitance.OfLead(12_000.Mm, LeadTone.MostCable) * 1e-12) / 1000:0} kHz.");

    public static ToneSheet Of(RigProblem problem, Rig rig, LeadTone tone, LengthUnit unit) => new(
        StoryOf(problem, tone.Lead, unit),
        tone.Cases.Select(way => RowOf(way, tone.Cases[^1], unit)).ToValueList(),
        ToneRemedies.For(problem, rig, tone, unit).ToValueList(),
        AssumedIn(problem, tone).ToValueList());

    /// <summary>One number where both are the same to the reader.</summary>
    public static string KilohertzOf(ToneCase way) => Range(way.Dark.Resonance / 1000, way.Bright.Resonance / 1000, "0.0", "kHz");

    /// <summary>Per cent that a resonance lies below another, at the bright and at the dark end; from zero up.</summary>
    public static string MovedTo(ToneCase way, ToneCase from)
    {
        var (bright, dark) = (1 - (way.Bright.Resonance / from.Bright.Resonance), 1 - (way.Dark.Resonance / from.Dark.Resonance));
        return $"{Range(100 * Math.Min(bright, dark), 100 * Math.Max(bright, dark), "0", "%")} lower";
    }

    /// <summary>Leads are told in metres or feet.</summary>
    public static string Long(Millimetres length, LengthUnit unit) => unit == LengthUnit.Inches
        ? string.Create(CultureInfo.InvariantCulture, $"{length.Value / 304.8m:0.#} ft")
        : string.Create(CultureInfo.InvariantCulture, $"{length.Value / 1000m:0.#} m");

    private static string StoryOf(RigProblem problem, LongLead lead, LengthUnit unit)
    {
        var boxes = lead.Boxes switch { 0 => "", 1 => " and 1 box of bare wire", var many => $" and {many} boxes of bare wire" };
        var end = lead.Buffer is { } buffer ? $"{problem.NameOf(buffer)}, which buffers" : problem.Amp is { } amp ? amp.Name : "the desk";
        return $"With every true-bypass box off, the pickup drives {Long(lead.Length, unit)} of lead{boxes}, as far as {end}. A box that is on buffers too, as a rule (common practice), so this is the dullest case.";
    }

    private static ToneRow RowOf(ToneCase way, ToneCase brief, LengthUnit unit) => new(
        way.Way,
        way.Way switch
        {
            ToneWay.AsWired => "As wired",
            ToneWay.BufferFirst => "With a buffer where the board begins",
            _ => $"{Long(way.Length, unit)} of lead alone",
        },
        way.Boxes == 0 ? Long(way.Length, unit) : $"{Long(way.Length, unit)}, {Words.Count(way.Boxes, "box", "boxes")}",
        Range(way.Bright.Farads * 1e12, way.Dark.Farads * 1e12, "0", "pF"),
        KilohertzOf(way),
        way == brief ? "–" : MovedTo(way, brief));

    private static IEnumerable<string> AssumedIn(RigProblem problem, LeadTone tone)
    {
        var pickup = problem.Instrument?.Pickup ?? Pickup.Unknown;
        if (pickup.Inductance is null)
            yield return $"Pickup: {LeadTone.LeastInductance / 1000}–{LeadTone.MostInductance / 1000} H (range for magnetic pickups, H. Lemme, as quoted).";
        if (pickup.Capacitance is null)
            yield return $"Winding: {LeadTone.LeastWinding}–{LeadTone.MostWinding} pF (same source).";
        if (pickup.Volume is null)
            yield return $"Volume control: {LeadTone.UsualVolume / 1000} kΩ, fully up (from memory).";
        if (tone.Lead.Pieces.Any(piece => piece.Capacitance is null))
            yield return $"Leads that do not say: {LeadTone.LeastCable}–{LeadTone.MostCable} pF/m (an electronics and a player's article).";
        if (tone.Lead.Boxes > 0)
            yield return $"Each box of bare wire: as {LeadTone.BoxAsLead / 10} cm of lead (common practice).";
        yield return $"Coil wire: {LeadTone.WirePerHenry / 1000} kΩ for each henry (two physics exercises); input: {LeadTone.Input / 1_000_000} MΩ (electronics article). They set how high the peak is, not where.";
    }

    private static string Range(double least, double most, string format, string unit)
    {
        var (low, high) = (least.ToString(format, CultureInfo.InvariantCulture), most.ToString(format, CultureInfo.InvariantCulture));
        return low == high ? $"{low} {unit}" : $"{low}–{high} {unit}";
    }
}
