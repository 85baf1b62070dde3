using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
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

    public static string DescriptionOf(RigProblem problem, IReadOnlyCollection<PlacedBody> bodies, LengthUnit unit) =>
        $"{LengthText.Format(problem.Board.Width, unit)} by {LengthText.Format(problem.Board.Depth, unit)}; the player stands at the bottom. "
        + string.Join(" ", bodies.OrderBy(body => body.Placement.At.X).Select(body => PlaceOf(body, unit)));

    private static string PlaceOf(PlacedBody body, LengthUnit unit)
    {
        var turned = body.Placement.Turn == Turn.None ? "" : $", turned {(int)body.Placement.Turn}° clockwise";
        return $"{body.Number}: {body.Name}, {LengthText.Format(body.Placement.At.X, unit)} from the left, {LengthText.Format(body.Placement.At.Y, unit)} from the front{turned}.";
    }
}
