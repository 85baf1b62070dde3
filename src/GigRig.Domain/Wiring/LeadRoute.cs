using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Wiring;

/// <summary>The way of a lead along and across the board.</summary>
/// <param name="Corners">From the tip of one plug to the tip of the other; each piece runs straight right, left, back or forth.</param>
public sealed record LeadRoute(ValueList<Point> Corners)
{
    public Millimetres Length => Corners.Zip(Corners.Skip(1), Distance).Sum().Mm;

    /// <summary>Along and across, in millimetres.</summary>
    internal static int Distance(Point a, Point b) => Math.Abs(a.X.Value - b.X.Value) + Math.Abs(a.Y.Value - b.Y.Value);
}
