using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Wishes;

/// <summary>Who does a role: a device, the amp or an off-board thing, with the function it uses.</summary>
public sealed record Cover(Role Role, GearId Thing, RoleFunction Function);

/// <summary>A need and who covers it; null where nobody does.</summary>
public sealed record NeedCoverage(Need Need, Cover? Cover);

/// <summary>A sound and who plays each of its roles at that moment; null where it cannot be played.</summary>
public sealed record SoundCoverage(Sound Sound, ValueList<Cover>? Covers);

/// <summary>Who covers what in a rig, in the order of the event's needs and sounds.</summary>
public sealed record Coverage(ValueList<NeedCoverage> Needs, ValueList<SoundCoverage> Sounds)
{
    /// <summary>
    /// A need goes to the best-rated function for it; among equals to the device first in the problem, then the amp, then off-board things.
    /// A sound goes to functions that can be on at the same moment.
    /// </summary>
    public static Coverage Of(RigProblem problem, Rig rig)
    {
        var functions = problem.FunctionsIn(rig).ToList();
        return new(
            problem.Event.Needs.Select(need => new NeedCoverage(need, BestFor(need.Role, functions))).ToValueList(),
            problem.Event.Sounds.Select(sound => new SoundCoverage(sound, OneMoment.Find(sound.Roles, functions))).ToValueList());
    }

    // MaxBy keeps the first of equals.
    private static Cover? BestFor(Role role, IEnumerable<(GearId Thing, RoleFunction Function)> functions) =>
        functions.Where(f => f.Function.Role.Meets(role)).Select(f => new Cover(role, f.Thing, f.Function)).MaxBy(cover => cover.Function.Rating);
}
