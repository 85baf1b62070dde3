using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Workbench;

/// <summary>What was done, in words that can be read out.</summary>
internal static class EditWords
{
    /// <summary>Such as <c>Echo moved to 120, 40 mm</c>.</summary>
    public static string Moved(RigProblem problem, GearId id, Point to, LengthUnit unit) => $"{problem.NameOf(id)} moved to {PlaceOf(to, unit)}";

    /// <summary>From the left and from the front, with the unit said once.</summary>
    public static string PlaceOf(Point at, LengthUnit unit) => $"{LengthText.Format(at.X, unit).Split(' ')[0]}, {LengthText.Format(at.Y, unit)}";

    public static string Turned(RigProblem problem, GearId id, Turn turn) =>
        turn == Turn.None ? $"{problem.NameOf(id)} stands straight" : $"{problem.NameOf(id)} turned to {(int)turn}°";

    /// <summary>With what that brought and what it left home: <c>Planned again; Echo comes along, Hall and Fuzz stay home</c>.</summary>
    public static string PlannedAgain(RigProblem problem, Rig before, Rig after)
    {
        var (here, there) = (Things(before), Things(after));
        string[] changes = [Told(there.Except(here), "comes along", "come along"), Told(here.Except(there), "stays home", "stay home")];
        var told = string.Join(", ", changes.Where(change => change.Length > 0));
        return told.Length > 0 ? $"Planned again; {told}" : "Planned again";

        static IEnumerable<GearId> Things(Rig rig) => rig.Placements.Select(placement => placement.Id).Concat(rig.OffBoard);

        string Told(IEnumerable<GearId> things, string one, string several) => things.Select(problem.NameOf).ToList() switch
        {
            [] => "",
            [var only] => $"{only} {one}",
            var names => $"{names.Listed()} {several}",
        };
    }

    /// <summary>What was done, then what is wrong with the things it was done to, or that it no longer is.</summary>
    /// <param name="before">What was wrong before.</param>
    /// <param name="after">What is wrong now.</param>
    public static string WithFaults(string done, IEnumerable<Violation> before, IReadOnlyCollection<Violation> after, GearId? about, LengthUnit unit)
    {
        var concerned = after.Where(fault => about is { } id ? fault.Culprits.Contains(id) : true).Select(fault => fault.Sentence.In(unit)).ToList();
        if (concerned.Count > 0)
            return $"{done}. {string.Join(" ", concerned)}";
        return after.Count == 0 && before.Any() ? $"{done}. No rule is broken any more." : $"{done}.";
    }
}
