using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Web.Sheets;

/// <summary>What one thing does in each sound.</summary>
/// <param name="On">For each sound the roles it plays there; empty where it plays none.</param>
public sealed record SwitchingLine(string Title, bool IsAmp, ValueList<string> On);

/// <summary>What the feet do to get from one sound to the next in the event's order.</summary>
/// <param name="Steps">Such as <c>Fuzz on (Boost)</c>; empty where nothing is pressed.</param>
public sealed record SoundChange(string From, string To, ValueList<string> Steps);

/// <summary>
/// What is on in each sound that can be played. It counts things, not switches: which switch of a box is for which of its functions nobody has entered. What no role of a
/// sound asks for is taken as off, but for an amp, which always has some channel on.
/// </summary>
public sealed record SwitchingSheet(ValueList<string> Sounds, ValueList<SwitchingLine> Lines, ValueList<SoundChange> Changes)
{
    public static SwitchingSheet Of(RigProblem problem, Rig rig)
    {
        var numbers = RigNumbers.Of(rig);
        var played = Coverage.Of(problem, rig).Sounds.Where(sound => sound.Covers is not null).ToList();
        var lines = played.SelectMany(sound => sound.Covers!.Value).Select(cover => cover.Thing).Distinct()
            .OrderBy(id => numbers.GetValueOrDefault(id, int.MaxValue))
            .Select(LineOf)
            .ToValueList();
        var sounds = played.Select(sound => sound.Sound.Name).ToValueList();
        return new(sounds, lines, Enumerable.Range(1, Math.Max(0, sounds.Count - 1)).Select(at => new SoundChange(sounds[at - 1], sounds[at], lines.Select(line => StepOf(line, at)).Where(step => step.Length > 0).ToValueList())).ToValueList());

        SwitchingLine LineOf(GearId id) => new(
            numbers.TryGetValue(id, out var number) ? $"{number} {problem.NameOf(id)}" : problem.NameOf(id),
            id == problem.Amp?.Id,
            played.Select(sound => string.Join(" + ", sound.Covers!.Value.Where(cover => cover.Thing == id).Select(cover => cover.Function.Role).Distinct().Select(problem.TitleOf))).ToValueList());

        string StepOf(SwitchingLine line, int at) => (Before(line, at), line.On[at]) switch
        {
            var (before, after) when before == after || (line.IsAmp && after.Length == 0) => "",
            (_, "") => $"{line.Title} off",
            ("", var after) when !line.IsAmp => $"{line.Title} on ({after})",
            (_, var after) => $"{line.Title} to {after}{(line.IsAmp && problem.Amp is { Footswitch: false } ? ", by hand" : "")}",
        };
    }

    // An amp stays on the channel it was last asked for.
    private static string Before(SwitchingLine line, int at) =>
        line.IsAmp ? line.On.Take(at).LastOrDefault(on => on.Length > 0) ?? "" : line.On[at - 1];
}
