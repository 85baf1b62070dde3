using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>Random boards and supplies that pass the checks.</summary>
public static class AnyBoard
{
    private static Gen<Outlet> Outlet { get; } =
        from volts in AnyValue.Volts.HashSet[1, 3]
        from current in Gen.Int[1, 20_000]
        from rest in Gen.Select(AnyValue.CurrentType, AnyValue.Polarity, Gen.OneOf<string?>(null, "left", "right"))
        select new Outlet("", volts.Order().ToValueList(), current.MilliA, rest.Item1, rest.Item2, rest.Item3);

    private static Gen<Overhang> Overhang { get; } =
        Gen.Int[0, 500].Array[4].Select(sides => new Overhang(sides[0].Mm, sides[1].Mm, sides[2].Mm, sides[3].Mm));

    public static Gen<Board> Board { get; } =
        from width in AnyValue.Length
        from depth in AnyValue.Length
        from rails in Rails(depth)
        from keepOuts in KeepOut(width, depth).ListOf(3)
        from overhang in Overhang
        from rest in Gen.Select(AnyGear.Id, AnyValue.Name, AnyValue.Mass)
        from limits in Gen.Select(AnyValue.Mass.OrNothing(), AnyValue.Length.OrNothing(), AnyValue.Length.OrNothing())
        select new Board(rest.Item1, rest.Item2, width, depth, rest.Item3, rails, keepOuts, overhang, limits.Item1, limits.Item2, limits.Item3);

    public static Gen<Supply> Supply { get; } =
        from rest in Gen.Select(AnyGear.Id, AnyValue.Name, AnyValue.Mass)
        from mount in Gen.Enum<SupplyMount>()
        from size in AnyValue.Size
        from outlets in Outlet.ListOf(8)
        from total in Gen.Int[1, 20_000].OrNothing()
        from mains in AnyGear.Mains
        select new Supply(rest.Item1, rest.Item2, rest.Item3, mount, mount == SupplyMount.Off ? null : size, Numbered(outlets), total?.MilliA) { Mains = mains };

    // Cutting the depth at different places gives bands that can't overlap.
    private static Gen<ValueList<Rail>> Rails(Millimetres depth) =>
        Gen.Int[0, depth.Value].HashSet[0, Math.Min(8, depth.Value)].Select(cuts =>
            cuts.Order().Chunk(2).Where(pair => pair.Length == 2).Select(pair => new Rail(pair[0].Mm, pair[1].Mm)).ToValueList());

    private static Gen<Rect> KeepOut(Millimetres width, Millimetres depth) =>
        from x in Gen.Int[0, width.Value - 1]
        from y in Gen.Int[0, depth.Value - 1]
        from size in Gen.Select(Gen.Int[1, width.Value - x], Gen.Int[1, depth.Value - y])
        select new Rect(x.Mm, y.Mm, size.Item1.Mm, size.Item2.Mm);

    private static ValueList<Outlet> Numbered(ValueList<Outlet> outlets) =>
        outlets.Select((outlet, number) => outlet with { Id = $"{number + 1}" }).ToValueList();
}
