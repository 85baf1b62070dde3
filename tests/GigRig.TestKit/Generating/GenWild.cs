using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>Drafts that nothing has looked at: any number, any text, any undefined word, over and under every limit.</summary>
public static class GenWild
{
    private static readonly Gen<int> Number = Gen.OneOf(Gen.Int[-3, 60], Gen.Int, Gen.OneOf(int.MinValue, int.MaxValue, 0, 3000, 3001));

    private static readonly Gen<string> Text = Gen.OneOf(Gen.String, Gen.OneOf("echo", "echo", "a", "drive.high", "", " ", null!));

    private static readonly Gen<Millimetres> Length = Number.Select(Millimetres.From);

    private static readonly Gen<Grams> Mass = Number.Select(Grams.From);

    private static readonly Gen<Millivolts> Volts = Number.Select(Millivolts.From);

    private static readonly Gen<Milliamps> Current = Number.Select(Milliamps.From);

    private static readonly Gen<BodySize> Size = Gen.Select(Length, Length, Length, (width, depth, height) => new BodySize(width, depth, height));

    private static readonly Gen<ValueList<RoleFunction>> Functions =
        List(Gen.Select(Text, Number, Text, (role, rating, section) => new RoleFunction(new(role), rating, section)));

    private static readonly Gen<Board> Board =
        from id in Text
        from size in Size
        from mass in Mass
        from rails in List(Gen.Select(Length, Length, (begin, end) => new Rail(begin, end)))
        from keepOuts in List(Gen.Select(Length, Length, Length, Length, (x, y, width, depth) => new Rect(x, y, width, depth)))
        from overhang in Gen.Select(Length, Length, Length, Length, (front, rear, left, right) => new Overhang(front, rear, left, right))
        select new Board(new(id), id, size.Width, size.Depth, mass, rails, keepOuts, overhang, mass, size.Height, size.Width);

    private static readonly Gen<MainsInput> Mains =
        Gen.Select(Number, Number, Word<MainsPlug>(), Number, (least, most, plug, watts) => new MainsInput(least, most, plug, watts));

    private static readonly Gen<Supply> Supply =
        from id in Text
        from mass in Mass
        from mount in Word<SupplyMount>()
        from size in Size
        from sized in Gen.Bool
        from outlets in List(
            from name in Text
            from volts in List(Volts)
            from current in Current
            from type in Word<CurrentType>()
            from polarity in Word<Polarity>()
            select new Outlet(name, volts, current, type, polarity, name))
        from total in Current
        from mains in Mains
        select new Supply(new(id), id, mass, mount, sized ? size : null, outlets, total) { Mains = mains };

    private static readonly Gen<Device> Device =
        from id in Text
        from size in Size
        from mass in Mass
        from turns in List(Word<Turn>())
        from power in Gen.Select(Volts, Volts, Current, Word<CurrentType>(), Word<Polarity>(), Number, (min, max, current, type, polarity, capacity) =>
            new PowerNeed(min, max, current, type, polarity, true, capacity))
        from jacks in List(Gen.Select(Word<JackUse>(), Word<Side>(), Length, (use, side, at) => new Jack(use, side, at)))
        from switches in List(Gen.Select(Length, Length, (x, y) => new Point(x, y)))
        from functions in Functions
        from bypass in Word<Bypass>()
        from level in Word<SignalLevel>()
        select new Device(new(id), id, size, mass, turns, power, jacks, bypass, switches, functions, InputLevel: level);

    private static readonly Gen<Lead> Lead =
        Gen.Select(Text, Word<LeadKind>(), Length, Word<PlugShape>(), Number, Number, (id, kind, length, plug, count, capacitance) => new Lead(new(id), id, kind, length, plug, plug, count, capacitance));

    private static readonly Gen<Instrument> Instrument =
        Gen.Select(Text, Word<InstrumentFamily>(), Number, Number, Number, (id, family, inductance, capacitance, volume) =>
            new Instrument(new(id), id, id, family) { Pickup = new(inductance, capacitance, volume) });

    private static readonly Gen<EventType> Event =
        from name in Text
        from needs in List(Gen.Select(Text, Word<NeedLevel>(), Number, (role, level, weight) => new Need(new(role), level, weight)))
        from sounds in List(Gen.Select(Text, List(Text.Select(key => new Role(key))), Word<NeedLevel>(), Number, (sound, roles, level, weight) => new Sound(sound, roles, level, weight)))
        from limits in Gen.Select(Mass, Number, Number, (mass, devices, free) => new EventLimits(mass, devices, free))
        from chain in Word<ChainPolicy>()
        from venue in Gen.Select(Number, Word<MainsPlug>(), (volts, socket) => new VenueMains(volts, socket))
        select new EventType(name, needs, sounds, limits, chain) { Venue = venue };

    private static readonly Gen<PlanOptions> Options =
        from pin in List(Text.Select(id => new GearId(id)))
        from ban in List(Text.Select(id => new GearId(id)))
        from places in List(Gen.Select(Text, Length, Length, Word<Turn>(), (id, x, y, turn) => new Placement(new(id), new(x, y), turn)))
        from ticks in Gen.Long
        from headroom in Gen.Decimal
        from plug in Gen.Select(Length, Length, (standsOut, width) => new PlugSize(standsOut, width))
        from spacing in Length
        from alternatives in Number
        select new PlanOptions
        {
            Pin = pin, Ban = ban, Fixed = places, TimeLimit = TimeSpan.FromTicks(ticks), Headroom = headroom, Plugs = new(plug, plug), SwitchSpacing = spacing, Alternatives = alternatives,
            Wiring = new(spacing, spacing, spacing, spacing, spacing),
        };

    public static Gen<RigProblemDraft> Draft { get; } =
        from board in Board
        from supply in Supply
        from adapters in Gen.Select(Number, Number, Number, Number, (reverse, parallel, series, splitter) => new PowerAdapters(reverse, parallel, series, splitter))
        from amp in Gen.Select(Text, Mass, Functions, Word<AmpLoop>(), Word<SignalLevel>(), Mains, (id, mass, functions, loop, level, mains) => new Amp(new(id), id, mass, functions, loop, LoopLevel: level) { Mains = mains })
        from devices in List(Device)
        from offBoard in List(Gen.Select(Text, Mass, Functions, (id, mass, functions) => new OffBoardItem(new(id), id, mass, functions)))
        from leads in List(Lead)
        from instrument in Instrument
        from night in Event
        from options in Options
        select new RigProblemDraft
        {
            Board = board, Supply = supply, Adapters = adapters, Amp = amp, Devices = devices, OffBoard = offBoard, Leads = leads, Instrument = instrument, Event = night, Options = options,
        };

    private static Gen<ValueList<T>> List<T>(Gen<T> one) => one.Array[0, 3].Select(items => items.ToValueList());

    private static Gen<TWord> Word<TWord>()
        where TWord : struct, Enum => Gen.OneOf(Gen.Enum<TWord>(), Gen.Int[-2, 300].Select(number => (TWord)Enum.ToObject(typeof(TWord), number)));
}
