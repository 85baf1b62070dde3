using GigRig.Web.Drawing;

namespace GigRig.Web.Features.Workbench;

/// <summary>What an edge belongs to; decides what may be laid against it.</summary>
public enum EdgeOf
{
    Body,
    Plug,

    /// <summary>The board itself or a rail: bodies line up with it.</summary>
    Ground,
}

/// <summary>A straight edge that a thing can snap to while it is dragged, in the scene's millimetres. Short names: they go to the browser.</summary>
/// <param name="Id">The thing it belongs to; empty for the board.</param>
/// <param name="Across">True for an edge that runs from left to right, at a height; false for one that runs from rear to front.</param>
/// <param name="At">Where it is.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Far">Whether its thing lies before it: the right edge and the lower one.</param>
public sealed record SnapEdge(string Id, bool Across, double At, double From, double To, bool Far, EdgeOf Of);

/// <summary>
/// Every edge worth snapping to. The rule they are used by, in one place, the browser's: an edge meets the opposite edge of another thing where the two
/// lie beside each other (they touch), and the same edge of another body, of the board or of a rail anywhere (they line up).
/// </summary>
public static class SnapEdges
{
    public static IReadOnlyList<SnapEdge> Of(BoardScene scene) =>
    [
        .. Around("", scene.Surface, EdgeOf.Ground),
        .. scene.Rails.SelectMany(rail => Around("", rail, EdgeOf.Ground).Where(edge => edge.Across)),
        .. scene.Bodies.SelectMany(body => Around(body.Id.Value, body.Area, EdgeOf.Body).Concat(body.Plugs.SelectMany(plug => Around(body.Id.Value, plug.Area, EdgeOf.Plug)))),
    ];

    private static IEnumerable<SnapEdge> Around(string id, SceneArea area, EdgeOf of) =>
    [
        new(id, false, area.X, area.Y, area.Bottom, false, of),
        new(id, false, area.Right, area.Y, area.Bottom, true, of),
        new(id, true, area.Y, area.X, area.Right, false, of),
        new(id, true, area.Bottom, area.X, area.Right, true, of),
    ];
}
