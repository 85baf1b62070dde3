using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>Supplies of up to four outlets, some sharing a return, and a few adapter leads.</summary>
public static class GenSupply
{
    public static Gen<Outlet> Outlet(int index) =>
        Gen.Select(
            Gen.OneOf<ValueList<Millivolts>>([9.V], [9.V], [9.V, 12.V], [18.V]),
            Gen.Int[2, 15],
            GenGear.CurrentType,
            GenGear.Polarity,
            Gen.OneOf<string?>(null, null, "g", "h"),
            (volts, current, type, polarity, group) => new Outlet($"{index + 1}", volts, (10 * current).MilliA, type, polarity, group));

    public static Gen<Supply> Small { get; } =
        from count in Gen.Int[0, 4]
        from outlets in GenMany.Each(count, Outlet)
        from mount in Gen.Enum<SupplyMount>()
        from size in Gen.Select(Gen.Int[1, 3], Gen.Int[1, 3], Gen.Int[1, 3], (width, depth, height) => new BodySize(width.Mm, depth.Mm, height.Mm))
        from mass in Gen.Int[0, 9]
        from total in GenMany.Seldom(Gen.Int[5, 40].Select(tens => (10 * tens).MilliA))
        select new Supply(new("supply"), "Supply", (100 * mass).G, mount, mount == SupplyMount.Off ? null : size, outlets, total);

    public static Gen<PowerAdapters> Adapters { get; } = Gen.Frequency(
        (1, Gen.Const(PowerAdapters.None)),
        (2, Gen.Select(Gen.Int[0, 2], Gen.Int[0, 2], Gen.Int[0, 1], Gen.Int[0, 2], (reverse, parallel, series, splitter) => new PowerAdapters(reverse, parallel, series, splitter))));
}
