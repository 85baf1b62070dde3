using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>
/// Gear small enough that every way of choosing and placing it can be tried: sizes of 1–4 mm, a handful of roles, voltages and currents that meet and miss each other often.
/// </summary>
public static class GenGear
{
    public static Gen<Role> Role { get; } = Gen.OneOf("drive", "drive.high", "delay", "reverb", "tuner").Select(key => new Role(key));

    public static Gen<RoleFunction> Function { get; } =
        Gen.Select(Role, Gen.Int[1, 5], Gen.OneOf<string?>(null, null, "s", "t"), (role, rating, section) => new RoleFunction(role, rating, section));

    public static Gen<ValueList<RoleFunction>> Functions { get; } = Function.Array[0, 3].Select(functions => functions.ToValueList());

    public static Gen<Polarity> Polarity { get; } = Gen.Frequency((4, Gen.Const(Domain.Gear.Polarity.Negative)), (1, Gen.Const(Domain.Gear.Polarity.Positive)));

    public static Gen<CurrentType> CurrentType { get; } = Gen.Frequency((5, Gen.Const(Domain.Gear.CurrentType.Dc)), (1, Gen.Const(Domain.Gear.CurrentType.Ac)));

    public static Gen<PowerNeed> Power { get; } =
        Gen.Select(Gen.OneOf(9, 12, 18), Gen.OneOf(0, 0, 9), Gen.Int[1, 12], CurrentType, Polarity, Gen.Bool, (min, range, current, type, polarity, battery) =>
            new PowerNeed(min.V, (min + range).V, (10 * current).MilliA, type, polarity, battery));

    public static Gen<ValueList<Turn>> Turns { get; } = Gen.OneOf<ValueList<Turn>>(
        [Turn.None], [Turn.None, Turn.Half], [Turn.Quarter], [Turn.None, Turn.Quarter, Turn.Half, Turn.ThreeQuarter]);

    /// <summary>On a body at least one millimetre each way.</summary>
    public static Gen<Jack> JackOf(BodySize size) =>
        from use in Gen.Enum<JackUse>()
        from side in Gen.Enum<Side>()
        from at in Gen.Int[0, side is Side.Left or Side.Right ? size.Depth.Value : size.Width.Value]
        select new Jack(use, side, at.Mm);

    public static Gen<Device> Device(int index) =>
        from size in Gen.Select(Gen.Int[1, 4], Gen.Int[1, 4], Gen.Int[1, 4], (width, depth, height) => new BodySize(width.Mm, depth.Mm, height.Mm))
        from mass in Gen.Int[0, 5]
        from turns in Turns
        from power in Gen.Frequency((2, Power.Select(power => (PowerNeed?)power)), (1, Gen.Const((PowerNeed?)null)))
        from jacks in JackOf(size).Array[0, 2]
        from bypass in Gen.Enum<Bypass>()
        from switches in Gen.Select(Gen.Int[0, size.Width.Value], Gen.Int[0, size.Depth.Value], (x, y) => new Point(x.Mm, y.Mm)).Array[0, 1]
        from functions in Functions
        from bare in Gen.Bool
        from level in Gen.Enum<SignalLevel>()
        select new Device(new($"d{index}"), $"Device {index}", size, (100 * mass).G, turns, power, jacks.ToValueList(), bypass, switches.ToValueList(), functions, bare, level);

    public static Gen<Amp> Amp { get; } =
        Gen.Select(Gen.Int[0, 9], Functions, Gen.Enum<AmpLoop>(), Gen.Bool, Gen.Enum<SignalLevel>(), (mass, functions, loop, footswitch, level) =>
            new Amp(new("amp"), "Amp", (1000 * mass).G, functions, loop, footswitch, level));

    public static Gen<Lead> Lead(int index) =>
        Gen.Select(Gen.Enum<LeadKind>(), Gen.Int[1, 9], Gen.Enum<PlugShape>(), Gen.Enum<PlugShape>(), Gen.Int[1, 3], (kind, length, first, second, count) =>
            new Lead(new($"l{index}"), $"Lead {index}", kind, (10 * length).Mm, first, second, count));

    public static Gen<Instrument?> Instrument { get; } =
        Gen.Enum<InstrumentFamily>().Select(Gen.Bool, (family, there) => there ? new Instrument(new("instrument"), "Instrument", "any", family) : null);

    public static Gen<OffBoardItem> OffBoard(int index) =>
        Gen.Select(Gen.Int[0, 3], Functions, (mass, functions) => new OffBoardItem(new($"o{index}"), $"Off-board {index}", (10 * mass).G, functions));
}
