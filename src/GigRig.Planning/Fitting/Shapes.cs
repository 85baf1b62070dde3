using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Planning.Fitting;

/// <summary>Turns owned things into shapes.</summary>
internal static class Shapes
{
    public static Shape Of(Device device, PlugSizes plugs)
    {
        var outline = Outline.Of(device, plugs);
        return new([.. device.Turns.Order().Select(turn => Pose(outline, turn))]);
    }

    /// <summary>A supply on top: a bare rectangle, either way round.</summary>
    public static Shape Of(BodySize size)
    {
        var outline = Outline.Of(size);
        return new([Pose(outline, Turn.None), Pose(outline, Turn.Quarter)]);
    }

    private static Pose Pose(Outline outline, Turn turn)
    {
        var atOrigin = new Placement(default, new Point(Millimetres.Zero, Millimetres.Zero), turn);
        var (body, plugs) = outline.Placed(atOrigin);

        // The plugs of one thing may overlap each other; as disjoint pieces they can share one no-overlap constraint with everything else.
        Box[] pieces = [Box(body), .. Fitting.Box.Disjoint(plugs.Select(Box).Where(b => !b.IsEmpty))];
        return new(turn, pieces, [.. outline.PlacedSwitches(atOrigin).Select(p => (p.X.Value, p.Y.Value))]);
    }

    private static Box Box(Rect rect) => new(rect.X.Value, rect.Y.Value, rect.Width.Value, rect.Depth.Value);
}
