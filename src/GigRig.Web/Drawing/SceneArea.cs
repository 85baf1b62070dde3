using GigRig.Domain;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Web.Drawing;

/// <summary>A place in the picture, in millimetres. Origin: the board's rear-left corner; X runs right, Y runs down towards the player, who stands at the bottom.</summary>
public readonly record struct SceneSpot(double X, double Y)
{
    public static SceneSpot Of(Point point, Millimetres boardDepth) => new(point.X.Value, boardDepth.Value - point.Y.Value);

    /// <summary>The middle of the longest piece of a line with right angles.</summary>
    public static SceneSpot MiddleOf(ValueList<SceneSpot> corners) => corners.Zip(corners.Skip(1)).MaxBy(piece => Math.Abs(piece.First.X - piece.Second.X) + Math.Abs(piece.First.Y - piece.Second.Y)) is var (from, to)
        ? new((from.X + to.X) / 2, (from.Y + to.Y) / 2)
        : corners[0];
}

/// <summary>An upright rectangle of the picture, in millimetres.</summary>
public readonly record struct SceneArea(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public SceneSpot Centre => new(X + (Width / 2), Y + (Height / 2));

    /// <summary>The board's Y runs away from the player, the picture's towards them.</summary>
    public static SceneArea Of(Rect rect, Millimetres boardDepth) =>
        new(rect.X.Value, boardDepth.Value - rect.Rear.Value, rect.Width.Value, rect.Depth.Value);

    public SceneArea GrownBy(double margin) => new(X - margin, Y - margin, Width + (2 * margin), Height + (2 * margin));

    public SceneArea Around(SceneArea other)
    {
        var (x, y) = (Math.Min(X, other.X), Math.Min(Y, other.Y));
        return new(x, y, Math.Max(Right, other.Right) - x, Math.Max(Bottom, other.Bottom) - y);
    }

    public SceneArea Around(SceneSpot spot) => Around(new SceneArea(spot.X, spot.Y, 0, 0));
}
