using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>Random gear of every kind that passes the checks. Their ids are different from one another.</summary>
public static class AnyGear
{
    public static Gen<GearId> Id { get; } = Gen.Guid.Select(id => new GearId(id.ToString("d")));

    public static Gen<Ownership> Ownership { get; } =
        from plain in Gen.Select(Gen.Enum<GearStatus>(), AnyValue.Name, Gen.Int[0, 1_000_000].OrNothing())
        from tags in AnyValue.Name.HashSet[0, 3]
        from lentTo in Gen.OneOf(Gen.Const(""), AnyValue.Name)
        from back in Gen.Int[0, 1_000_000].OrNothing()
        from guesses in Gen.Enum<Guess>().HashSet[0, 4]
        select new Ownership(plain.Item1, plain.Item2, plain.Item3)
        {
            Tags = tags.Where(tag => tag.Length <= 40).DistinctBy(tag => tag.ToUpperInvariant()).ToValueList(),
            LentTo = lentTo,
            BackOn = back is { } days ? DateOnly.FromDayNumber(days) : null,
            Guesses = guesses.Order().ToValueList(),
        };

    public static Gen<PowerNeed> PowerNeed { get; } =
        from volts in Gen.Select(AnyValue.Volts, AnyValue.Volts, (a, b) => (Min: a < b ? a : b, Max: a < b ? b : a))
        from current in Gen.Int[0, 20_000]
        from kind in Gen.Select(AnyValue.CurrentType, AnyValue.Polarity)
        from battery in Gen.Select(Gen.Bool, Gen.Int[1, 20_000].OrNothing())
        from digital in Gen.Bool.OrNothing()
        select new PowerNeed(volts.Min, volts.Max, current.MilliA, kind.Item1, kind.Item2, battery.Item1, battery.Item2, digital);

    public static Gen<MainsInput> Mains { get; } =
        from volts in Gen.Select(Gen.Int[50, 500], Gen.Int[50, 500], (a, b) => (Least: Math.Min(a, b), Most: Math.Max(a, b)))
        from known in Gen.Int[0, 2]
        from rest in Gen.Select(Gen.Enum<MainsPlug>().OrNothing(), Gen.Int[1, 10_000].OrNothing())
        select new MainsInput(known > 0 ? volts.Least : null, known > 1 ? volts.Most : null, rest.Item1, rest.Item2);

    public static Gen<Device> Device { get; } =
        from size in AnyValue.Size
        from jacks in Jack(size).ListOf(4)
        from switches in Point(size.Width, size.Depth).ListOf(3)
        from turns in Gen.Enum<Turn>().HashSet[1, 4]
        from rest in Gen.Select(Id, AnyValue.Name, AnyValue.Mass, Gen.Enum<Bypass>(), AnyValue.Functions)
        from powered in Gen.Bool
        from power in PowerNeed
        from bare in Gen.Bool
        from level in Gen.Enum<SignalLevel>()
        select new Device(rest.Item1, rest.Item2, size, rest.Item3, turns.Order().ToValueList(), powered ? power : null, jacks, rest.Item4, switches, rest.Item5, bare, level);

    public static Gen<Amp> Amp { get; } = Gen.Select(
        Id, AnyValue.Name, AnyValue.Mass, AnyValue.Functions, Gen.Enum<AmpLoop>(), Gen.Bool, Gen.Enum<SignalLevel>(), Mains,
        (id, name, mass, functions, loop, footswitch, level, mains) => new Amp(id, name, mass, functions, loop, footswitch, level) { Mains = mains });

    public static Gen<OffBoardItem> OffBoard { get; } = Gen.Select(
        Id, AnyValue.Name, AnyValue.Mass, AnyValue.Functions, (id, name, mass, functions) => new OffBoardItem(id, name, mass, functions));

    public static Gen<Lead> Lead { get; } = Gen.Select(
        Id, AnyValue.Name, Gen.Enum<LeadKind>(), AnyValue.Length, Gen.Enum<PlugShape>(), Gen.Enum<PlugShape>(), Gen.Int[1, 999], Gen.Int[1, 10_000].OrNothing(),
        (id, name, kind, length, first, second, count, capacitance) => new Lead(id, name, kind, length, first, second, count, capacitance));

    public static Gen<Pickup> Pickup { get; } = Gen.Select(
        Gen.Int[1, 100_000].OrNothing(), Gen.Int[0, 100_000].OrNothing(), Gen.Int[1, 10_000_000].OrNothing(), Gen.Bool.OrNothing(),
        (inductance, capacitance, volume, active) => new Pickup(inductance, capacitance, volume, active));

    public static Gen<Instrument> Instrument { get; } = Gen.Select(
        Id, AnyValue.Name, AnyValue.Name, Gen.Enum<InstrumentFamily>(), Pickup, (id, name, kind, family, pickup) => new Instrument(id, name, kind, family) { Pickup = pickup });

    public static Gen<PowerAdapters> Adapters { get; } = Gen.Select(
        Gen.Int[0, 99], Gen.Int[0, 99], Gen.Int[0, 99], Gen.Int[0, 99], (reverse, parallel, series, splitter) => new PowerAdapters(reverse, parallel, series, splitter));

    internal static Gen<Point> Point(Millimetres width, Millimetres depth) =>
        Gen.Select(Gen.Int[0, width.Value], Gen.Int[0, depth.Value], (x, y) => new Point(x.Mm, y.Mm));

    private static Gen<Jack> Jack(BodySize size) =>
        from side in Gen.Enum<Side>()
        from use in Gen.Enum<JackUse>()
        from at in Gen.Int[0, side is Side.Left or Side.Right ? size.Depth.Value : size.Width.Value]
        select new Jack(use, side, at.Mm);
}
