using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Web.Sheets;

namespace GigRig.Web.Drawing;

/// <summary>The list below the picture.</summary>
internal static class SceneLegend
{
    public static IEnumerable<LegendLine> Of(RigProblem problem, IEnumerable<PlacedBody> bodies) =>
        bodies.Select(body => new LegendLine(body.Number, body.Id, body.Name, body.Roles, PowerOf(problem, body), body.Placement.Turn, body.Glyph));

    private static string PowerOf(RigProblem problem, PlacedBody body)
    {
        if (body.HookUp is { Volts: "" } battery)
            return battery.Outlet;
        if (body.HookUp is { } fed)
            return $"{fed.Outlet}, {fed.Volts}";
        return problem.FindDevice(body.Id)?.Power is null ? "" : "not fed";
    }
}

/// <summary>The picture in words, for those who hear it.</summary>
internal static class SceneWords
{
    public static string TitleOf(RigProblem problem, Rig rig) =>
        $"{problem.Board.Name} seen from above, {rig.Placements.Count switch { 0 => "empty", 1 => "1 device", var count => $"{count} devices" }}";

    public static string DescriptionOf(RigProblem problem, IReadOnlyCollection<PlacedBody> bodies) =>
        $"{problem.Board.Width.Value} by {problem.Board.Depth}; the player stands at the bottom. "
        + string.Join(" ", bodies.OrderBy(body => body.Placement.At.X).Select(PlaceOf));

    private static string PlaceOf(PlacedBody body)
    {
        var turned = body.Placement.Turn == Turn.None ? "" : $", turned {(int)body.Placement.Turn}° clockwise";
        return $"{body.Number}: {body.Name}, {body.Placement.At.X} from the left, {body.Placement.At.Y} from the front{turned}.";
    }
}
