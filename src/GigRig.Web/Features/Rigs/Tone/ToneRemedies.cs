using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Features.Rigs.Tone;

/// <summary>What could be done about a dull long lead with what is owned.</summary>
internal static class ToneRemedies
{
    // Less than this hardly anybody hears: a rule of thumb of ours.
    private const double WorthCuring = 0.1;

    public static IEnumerable<string> For(RigProblem problem, LeadTone tone, LengthUnit unit)
    {
        var (wired, brief) = (tone.Cases[0], tone.Cases[^1]);
        if (wired.Middle.Resonance > brief.Middle.Resonance * (1 - WorthCuring))
        {
            yield return "Nothing to cure: it lies within a tenth of the short lead.";
            yield break;
        }

        if (tone.Cases.FirstOrDefault(way => way.Way == ToneWay.BufferFirst) is { } buffered)
            yield return $"{Earlier(problem, tone.Lead)}: {ToneSheet.KilohertzOf(buffered)} instead of {ToneSheet.KilohertzOf(wired)}.{BarePickup(problem)}";
        if (problem.Leads.Where(lead => lead.Kind == LeadKind.Instrument && lead.Length < tone.Lead.Pieces[0].Length).MinBy(lead => lead.Length) is { } shorter)
            yield return $"Play through {shorter.Name} ({LengthText.Format(shorter.Length, unit)}), if you stand near enough: each metre less counts.";
        else if (tone.Lead.Pieces[0].Length.Value > LeadTone.ShortLead * 1000)
            yield return "Play through a shorter instrument lead, or one with less capacitance: each metre less counts.";
    }

    private static string Earlier(RigProblem problem, LongLead lead)
    {
        if (lead.Buffer is { } buffer)
            return $"Move {problem.NameOf(buffer)}, which buffers, to where the board begins";
        return problem.Devices.FirstOrDefault(device => device is { Bypass: Bypass.Buffered, CarriesAudio: true }) is { } owned
            ? $"Put {owned.Name}, which buffers, where the board begins"
            : "Put a box that buffers where the board begins";
    }

    private static string BarePickup(RigProblem problem) =>
        problem.Devices.Where(device => device.WantsBarePickup).Select(device => device.Name).ToList() is { Count: > 0 } bare
            ? $" Keep {string.Join(", ", bare)} before it: the bare pickup is wanted there."
            : "";
}
