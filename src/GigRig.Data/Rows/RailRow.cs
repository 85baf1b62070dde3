using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

/// <summary>One rail inside a board's JSON column.</summary>
internal sealed class RailRow
{
    public int Front { get; set; }

    public int Rear { get; set; }

    public static RailRow From(Rail rail) => new() { Front = rail.From.Value, Rear = rail.To.Value };

    public Rail ToRail() => new(Front.Mm, Rear.Mm);
}

/// <summary>One keep-out inside a board's JSON column.</summary>
internal sealed class KeepOutRow
{
    public int X { get; set; }

    public int Y { get; set; }

    public int Width { get; set; }

    public int Depth { get; set; }

    public static KeepOutRow From(Rect rect) => new() { X = rect.X.Value, Y = rect.Y.Value, Width = rect.Width.Value, Depth = rect.Depth.Value };

    public Rect ToRect() => new(X.Mm, Y.Mm, Width.Mm, Depth.Mm);
}
