using GigRig.Domain.Units;

namespace GigRig.Domain.Geometry;

/// <summary>An upright rectangle on the board plane: its front-left corner and its size. Sizes are never negative.</summary>
public readonly record struct Rect(Millimetres X, Millimetres Y, Millimetres Width, Millimetres Depth)
{
    public Millimetres Right => X + Width;

    public Millimetres Rear => Y + Depth;

    /// <summary>The middle, rounded towards the front-left corner.</summary>
    public Point Middle => new(X + (Width.Value / 2).Mm, Y + (Depth.Value / 2).Mm);

    /// <summary>The shared part. A side of zero or less means that the two only touch or stand apart.</summary>
    public (Millimetres Width, Millimetres Depth) Overlap(Rect other) =>
        (Least(Right, other.Right) - Most(X, other.X), Least(Rear, other.Rear) - Most(Y, other.Y));

    /// <summary>Whether the two share any area; touching edges do not.</summary>
    public bool Overlaps(Rect other)
    {
        var (width, depth) = Overlap(other);
        return width > Millimetres.Zero && depth > Millimetres.Zero;
    }

    public bool Contains(Rect other) => other.X >= X && other.Y >= Y && other.Right <= Right && other.Rear <= Rear;

    public Rect MovedBy(Point offset) => this with { X = X + offset.X, Y = Y + offset.Y };

    /// <summary>This rectangle, given in the frame of an unturned body, as it lies once that body is turned clockwise about and set back to its own front-left corner.</summary>
    public Rect TurnedWith(BodySize body, Turn turn) => turn switch
    {
        Turn.Quarter => new(Y, body.Width - Right, Depth, Width),
        Turn.Half => new(body.Width - Right, body.Depth - Rear, Width, Depth),
        Turn.ThreeQuarter => new(body.Depth - Rear, X, Depth, Width),
        _ => this,
    };

    private static Millimetres Least(Millimetres a, Millimetres b) => a < b ? a : b;

    private static Millimetres Most(Millimetres a, Millimetres b) => a > b ? a : b;
}
