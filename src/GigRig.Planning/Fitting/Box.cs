using GigRig.Domain.Geometry;

namespace GigRig.Planning.Fitting;

/// <summary>A rectangle in whole millimetres, as plain numbers for the inner loops.</summary>
internal readonly record struct Box(int X, int Y, int Width, int Depth)
{
    public int Right => X + Width;

    public int Rear => Y + Depth;

    public bool IsEmpty => Width <= 0 || Depth <= 0;

    public static Box Of(Rect rect) => new(rect.X.Value, rect.Y.Value, rect.Width.Value, rect.Depth.Value);

    public Box MovedBy(int x, int y) => new(X + x, Y + y, Width, Depth);

    /// <summary>Along and across changed over.</summary>
    public Box Across() => new(Y, X, Depth, Width);

    public bool Overlaps(Box other) => X < other.Right && other.X < Right && Y < other.Rear && other.Y < Rear;

    public bool Contains(Box other) => other.X >= X && other.Y >= Y && other.Right <= Right && other.Rear <= Rear;

    /// <summary>What is left of this box outside <paramref name="other"/>, as boxes that do not overlap.</summary>
    public IEnumerable<Box> Without(Box other)
    {
        if (!Overlaps(other))
        {
            yield return this;
            yield break;
        }

        var bottom = Math.Max(Y, other.Y);
        var top = Math.Min(Rear, other.Rear);
        if (Y < bottom)
            yield return new(X, Y, Width, bottom - Y);
        if (top < Rear)
            yield return new(X, top, Width, Rear - top);
        if (X < other.X)
            yield return new(X, bottom, other.X - X, top - bottom);
        if (other.Right < Right)
            yield return new(other.Right, bottom, Right - other.Right, top - bottom);
    }

    /// <summary>The same area in pieces that do not overlap.</summary>
    public static IReadOnlyList<Box> Disjoint(IEnumerable<Box> boxes)
    {
        var pieces = new List<Box>();
        foreach (var box in boxes)
        {
            IEnumerable<Box> rest = [box];
            foreach (var taken in pieces.ToArray())
                rest = rest.SelectMany(r => r.Without(taken));
            pieces.AddRange(rest.Where(r => !r.IsEmpty).ToArray());
        }

        return pieces;
    }
}
