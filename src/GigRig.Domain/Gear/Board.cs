using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Gear;

/// <summary>A bearing band along the whole width of a board, from <paramref name="From"/> to <paramref name="To"/> measured from the front.</summary>
public readonly record struct Rail(Millimetres From, Millimetres To);

/// <summary>How far a plug may stick out over each edge of the board. A body never does.</summary>
public sealed record Overhang(Millimetres Front, Millimetres Rear, Millimetres Left, Millimetres Right)
{
    /// <summary>Freely on rear, left and right up to 40 mm, nothing at the front, where feet come.</summary>
    public static Overhang Usual { get; } = new(Millimetres.Zero, 40.Mm, 40.Mm, 40.Mm);
}

/// <summary>What stands under the feet: the surface that devices are fixed to.</summary>
/// <param name="Rails">Empty for a plain surface.</param>
/// <param name="KeepOuts">Where nothing may stand, neither body nor plug: a handle, a hinge, a socket.</param>
/// <param name="Mass">Of the board itself, with its case if it travels in one.</param>
/// <param name="MaxLoad">Null for no limit.</param>
/// <param name="ClearanceUnder">Free height below the surface; null for no limit.</param>
/// <param name="ClearanceOver">Free height up to the lid; null for no lid.</param>
public sealed record Board(
    GearId Id,
    string Name,
    Millimetres Width,
    Millimetres Depth,
    Grams Mass,
    ValueList<Rail> Rails,
    ValueList<Rect> KeepOuts,
    Overhang Overhang,
    Grams? MaxLoad = null,
    Millimetres? ClearanceUnder = null,
    Millimetres? ClearanceOver = null)
{
    public Rect Surface => new(Millimetres.Zero, Millimetres.Zero, Width, Depth);

    /// <summary>Where plugs may be: the surface grown by the overhang.</summary>
    public Rect PlugSpace => new(-Overhang.Left, -Overhang.Front, Width + Overhang.Left + Overhang.Right, Depth + Overhang.Front + Overhang.Rear);
}
