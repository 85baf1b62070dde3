using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("A bearing band, from and to millimetres from the front.")]
public sealed record RailDocument
{
    [Within(0, Bounds.MostSize)]
    public required int From { get; init; }

    [Within(0, Bounds.MostSize)]
    public required int To { get; init; }
}

[Description("A rectangle on the board.")]
public sealed record AreaDocument
{
    [Within(0, Bounds.MostSize)]
    public required int X { get; init; }

    [Within(0, Bounds.MostSize)]
    public required int Y { get; init; }

    [Within(Bounds.LeastSize, Bounds.MostSize)]
    public required int Width { get; init; }

    [Within(Bounds.LeastSize, Bounds.MostSize)]
    public required int Depth { get; init; }

    internal static AreaDocument Of(Rect rect) => new() { X = rect.X.Value, Y = rect.Y.Value, Width = rect.Width.Value, Depth = rect.Depth.Value };

    internal Rect ToRect() => new(X.Mm, Y.Mm, Width.Mm, Depth.Mm);
}

[Description("How far a plug may stick out over each edge; a body never does. Absent: 40 mm at rear, left and right, nothing at the front.")]
public sealed record OverhangDocument
{
    [Within(0, Bounds.MostOverhang)]
    public int? Front { get; init; }

    [Within(0, Bounds.MostOverhang)]
    public int? Rear { get; init; }

    [Within(0, Bounds.MostOverhang)]
    public int? Left { get; init; }

    [Within(0, Bounds.MostOverhang)]
    public int? Right { get; init; }

    internal static OverhangDocument? Of(Overhang overhang) => overhang == Overhang.Usual
        ? null
        : new() { Front = overhang.Front.Value, Rear = overhang.Rear.Value, Left = overhang.Left.Value, Right = overhang.Right.Value };

    internal Overhang ToOverhang() => new(
        Front?.Mm ?? Overhang.Usual.Front,
        Rear?.Mm ?? Overhang.Usual.Rear,
        Left?.Mm ?? Overhang.Usual.Left,
        Right?.Mm ?? Overhang.Usual.Right);
}

[Description("Free height below the surface and up to the lid. Absent: unlimited.")]
public sealed record ClearanceDocument
{
    [Within(0, Bounds.MostSize)]
    public int? Under { get; init; }

    [Within(0, Bounds.MostSize)]
    public int? Over { get; init; }

    internal static ClearanceDocument? Of(Board board) => board is { ClearanceUnder: null, ClearanceOver: null }
        ? null
        : new() { Under = board.ClearanceUnder?.Value, Over = board.ClearanceOver?.Value };
}
