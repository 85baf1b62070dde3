using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>Boards of 3–9 by 3–7 mm, now and then with rails, a keep-out, a lid or a load limit.</summary>
public static class GenBoard
{
    private static readonly Gen<Overhang> Overhangs = Gen.Frequency(
        (3, Gen.Const(Overhang.Usual)),
        (1, Gen.Select(Gen.Int[0, 2], Gen.Int[0, 2], Gen.Int[0, 2], Gen.Int[0, 2], (front, rear, left, right) => new Overhang(front.Mm, rear.Mm, left.Mm, right.Mm))));

    public static Gen<Board> Small { get; } =
        from width in Gen.Int[3, 9]
        from depth in Gen.Int[3, 7]
        from mass in Gen.Int[0, 3]
        from rails in Gen.Frequency((4, Gen.Const<ValueList<Rail>>([])), (1, RailsOn(depth)))
        from keepOuts in Gen.Frequency((4, Gen.Const<ValueList<Rect>>([])), (1, KeepOutOn(width, depth)))
        from overhang in Overhangs
        from load in GenMany.Seldom(Gen.Int[0, 15].Select(hundreds => (100 * hundreds).G))
        from under in GenMany.Seldom(Gen.Int[0, 4].Select(millimetres => millimetres.Mm))
        from over in GenMany.Seldom(Gen.Int[1, 4].Select(millimetres => millimetres.Mm))
        select new Board(new("board"), "Board", width.Mm, depth.Mm, (1000 * mass).G, rails, keepOuts, overhang, load, under, over);

    /// <summary>One or two rails that do not overlap.</summary>
    private static Gen<ValueList<Rail>> RailsOn(int depth) =>
        from first in Gen.Int[0, depth - 2]
        from firstEnd in Gen.Int[first + 1, depth - 1]
        from second in Gen.Int[firstEnd, depth - 1]
        from secondEnd in Gen.Int[second + 1, depth]
        from both in Gen.Bool
        select both ? (ValueList<Rail>)[new(second.Mm, secondEnd.Mm), new(first.Mm, firstEnd.Mm)] : [new(first.Mm, firstEnd.Mm)];

    private static Gen<ValueList<Rect>> KeepOutOn(int width, int depth) =>
        from x in Gen.Int[0, width - 1]
        from y in Gen.Int[0, depth - 1]
        from w in Gen.Int[1, Math.Min(2, width - x)]
        from d in Gen.Int[1, Math.Min(2, depth - y)]
        select (ValueList<Rect>)[new(x.Mm, y.Mm, w.Mm, d.Mm)];
}
