using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Planning.Fitting;

/// <summary>Turns owned things into shapes.</summary>
internal static class Shapes
{
    /// <summary>A device of the problem; fixed where it is fixed.</summary>
    public static Shape Of(RigProblem problem, Device device) => Held(problem, device.Id, Of(device, problem.Options.Plugs));

    /// <summary>Null unless the supply goes on top; fixed where it is fixed.</summary>
    public static Shape? OfSupply(RigProblem problem) =>
        problem.Supply is { Mount: SupplyMount.Top, Size: { } size } supply ? Held(problem, supply.Id, Of(size)) : null;

    public static Shape Of(Device device, PlugSizes plugs)
    {
        var outline = Apart(Outline.Of(device, plugs));
        return new([.. device.Turns.Order().Select(turn => Pose(outline, turn))]);
    }

    /// <summary>A supply on top: a bare rectangle, either way round.</summary>
    public static Shape Of(BodySize size)
    {
        var outline = Outline.Of(size);
        return new([Pose(outline, Turn.None), Pose(outline, Turn.Quarter)]);
    }

    private static Shape Held(RigProblem problem, GearId id, Shape shape) =>
        problem.Options.Fixed.FirstOrDefault(f => f.Id == id) is { } place ? shape.At(place.Turn, place.At.X.Value, place.At.Y.Value) : shape;

    /// <summary>
    /// The plugs of one thing may overlap each other; as disjoint pieces they can share one no-overlap constraint with everything else.
    /// Cut before turning, so that every pose has the same pieces in the same order.
    /// </summary>
    private static Outline Apart(Outline outline) => outline with
    {
        Plugs = Box.Disjoint(outline.Plugs.Select(Box.Of)).Select(b => new Rect(b.X.Mm, b.Y.Mm, b.Width.Mm, b.Depth.Mm)).ToValueList(),
    };

    private static Pose Pose(Outline outline, Turn turn)
    {
        var atOrigin = new Placement(default, new Point(Millimetres.Zero, Millimetres.Zero), turn);
        var (body, plugs) = outline.Placed(atOrigin);
        return new(turn, [Box.Of(body), .. plugs.Select(Box.Of)], [.. outline.PlacedSwitches(atOrigin).Select(p => (p.X.Value, p.Y.Value))]);
    }
}
