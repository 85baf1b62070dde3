using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Web.Sheets;

/// <summary>Who does a role that the event asks for.</summary>
/// <param name="Level">Such as <c>must</c> or <c>want, weight 20</c>.</param>
/// <param name="Thing">Null where nobody does.</param>
public sealed record RoleLine(string Role, string Level, bool Must, GearId? Thing, string ThingName, int Rating);

/// <summary>Who plays which part of a sound.</summary>
/// <param name="Parts">Empty where it cannot be played.</param>
public sealed record SoundLine(string Name, string Level, bool Must, string RoleWords, ValueList<SoundPart> Parts)
{
    /// <summary>Each thing once, with all it does at that moment: <c>amp (Clean sound), double (Delay + Reverb)</c>.</summary>
    public string Players => string.Join(", ", Parts.GroupBy(part => part.Thing).Select(thing => $"{thing.First().ThingName} ({string.Join(" + ", thing.Select(part => part.Role))})"));
}

/// <summary>One role of a sound and who does it at that moment.</summary>
public sealed record SoundPart(string Role, GearId Thing, string ThingName);

/// <summary>Who covers what, in words.</summary>
public sealed record CoverSheet(ValueList<RoleLine> Roles, ValueList<SoundLine> Sounds)
{
    public static CoverSheet Of(RigProblem problem, Rig rig)
    {
        var coverage = Coverage.Of(problem, rig);
        return new(
            coverage.Needs.Select(line => RoleLineOf(problem, line)).ToValueList(),
            coverage.Sounds.Select(line => SoundLineOf(problem, line)).ToValueList());
    }

    /// <summary>What a thing does in this rig, in plain words; what it could do best where it does nothing the event asks for.</summary>
    public static string RolesOf(RigProblem problem, Coverage coverage, GearId id, ValueList<RoleFunction> functions)
    {
        var done = coverage.Needs.Select(need => need.Cover).OfType<Cover>()
            .Concat(coverage.Sounds.SelectMany(sound => sound.Covers ?? []))
            .Where(cover => cover.Thing == id)
            .Select(cover => cover.Function.Role)
            .Distinct()
            .ToList();
        if (done.Count == 0 && functions.Count > 0)
            done.Add(functions.MaxBy(function => function.Rating)!.Role);
        return string.Join(", ", done.Select(problem.TitleOf));
    }

    private static RoleLine RoleLineOf(RigProblem problem, NeedCoverage line) => new(
        problem.TitleOf(line.Need.Role),
        LevelOf(line.Need.Level, line.Need.Weight),
        line.Need.Level == NeedLevel.Must,
        line.Cover?.Thing,
        line.Cover is { } cover ? problem.NameOf(cover.Thing) : "",
        line.Cover?.Function.Rating ?? 0);

    private static SoundLine SoundLineOf(RigProblem problem, SoundCoverage line) => new(
        line.Sound.Name,
        LevelOf(line.Sound.Level, line.Sound.Weight),
        line.Sound.Level == NeedLevel.Must,
        string.Join(" + ", line.Sound.Roles.Select(problem.TitleOf)),
        (line.Covers ?? []).Select(cover => new SoundPart(problem.TitleOf(cover.Role), cover.Thing, problem.NameOf(cover.Thing))).ToValueList());

    private static string LevelOf(NeedLevel level, int weight) => level == NeedLevel.Must ? "must" : $"want, weight {weight}";
}
