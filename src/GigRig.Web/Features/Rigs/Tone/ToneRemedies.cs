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

    public static IEnumerable<string> For(RigProblem problem, Rig rig, LeadTone tone, LengthUnit unit)
    {
        var (wired, brief) = (tone.Cases[0], tone.Cases[^1]);
        if (wired.Middle.Resonance > brief.Middle.Resonance * (1 - WorthCuring))
        {
            yield return "Nothing to cure: it lies within a tenth of the short lead.";
            yield break;
        }

        if (tone.Cases.FirstOrDefault(way => way.Way == ToneWay.BufferFirst) is { } buffered)
            yield return $"{Earlier(problem, rig)}: {ToneSheet.KilohertzOf(buffered)} instead of {ToneSheet.KilohertzOf(wired)}.{BarePickup(problem)}";
        if (problem.Leads.Where(lead => lead.Kind == LeadKind.Instrument && lead.Length < tone.Lead.Pieces[0].Length).MinBy(lead => lead.Length) is { } shorter)
            yield return $"Play through {shorter.Name} ({ToneSheet.Long(shorter.Length, unit)}), if you stand near enough: each metre less counts.";
        else if (tone.Lead.Pieces[0].Length.Value > LeadTone.ShortLead * 1000)
            yield return "Play through a shorter instrument lead, or one with less capacitance: each metre less counts.";
    }

    private static string Earlier(RigProblem problem, Rig rig)
    {
        var early = problem.Devices.Where(GoesEarly).ToList();
        if (early.Find(device => rig.Holds(device.Id)) is { } here)
            return $"Move {here.Name}, which buffers, to where the board begins";
        return early.Find(device => !rig.Holds(device.Id)) is { } owned
            ? $"Bring {owned.Name}, which buffers, and put it where the board begins"
            : "Put a box that buffers where the board begins";
    }

    /// <summary>Whether it buffers and its usual place is before the drives: an echo would do as a buffer, and sound wrong there.</summary>
    private static bool GoesEarly(Device device) =>
        device is { Bypass: Bypass.Buffered, CarriesAudio: true, Functions.Count: > 0 }
        && device.Functions.All(function => RoleCatalogue.ChainRankOf(function.Role) < RoleCatalogue.ChainRankOf(new("drive")));

    private static string BarePickup(RigProblem problem) =>
        problem.Devices.Where(device => device.WantsBarePickup).Select(device => device.Name).ToList() is { Count: > 0 } bare
            ? $" Keep {string.Join(", ", bare)} before it: the bare pickup is wanted there."
            : "";
}
