using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Benchmarks.Generating;

/// <summary>
/// Makes realistic problems: footprints and draws as published lists and makers state them, two thirds of the boxes with their jacks at the sides,
/// one in six free to stand turned a quarter, a supply a touring player would own, five musts and many weighted wants. The same seed gives the same problem.
/// </summary>
public sealed class LibraryGenerator(int seed)
{
    private static readonly string[] Musts = ["tuner", "drive.low", "drive.high", "delay", "boost"];

    private static readonly string[] Wants =
    [
        "reverb", "compressor", "modulation.chorus", "modulation.phaser", "modulation.tremolo", "equaliser", "gate", "filter", "pitch", "volume",
        "looper", "drive.fuzz", "modulation.rotary", "acoustic", "modulation.flanger", "modulation.vibrato", "direct", "swell", "drone",
    ];

    private readonly Random random = new(seed);

    public RigProblemDraft Make(int devices, int width, int depth)
    {
        var roles = Musts.Concat(Wants).ToArray();
        return new()
        {
            Board = new(new("board"), $"board {width} × {depth}", width.Mm, depth.Mm, 2500.G, [], [], Overhang.Usual),
            Supply = Supply(),
            Adapters = new(Reverse: 1, Parallel: 1, Series: 1),
            Amp = new(new("amp"), "amp", 15_000.G, [new(new("clean"), 4, "channel"), new(new("drive.low"), 3, "channel")], AmpLoop.Series, true),
            OffBoard = [new(new("clip-on"), "clip-on tuner", 40.G, [new(new("tuner"), 2)])],
            Devices = Enumerable.Range(0, devices).Select(i => Device(i, roles[i < roles.Length ? i : random.Next(roles.Length)])).ToValueList(),
            Event = new("benchmark night", [.. Musts.Select(r => new Need(new(r))), .. Wants.Select(r => new Need(new(r), NeedLevel.Want, random.Next(1, 31)))], [
                new("solo", [new("drive.low"), new("boost"), new("delay")]),
                new("wash", [new("delay"), new("reverb")], NeedLevel.Want, 15),
            ], EventLimits.None),
            Options = PlanOptions.Default with { TimeLimit = TimeSpan.FromSeconds(20), Arrange = false },
        };
    }

    private static Supply Supply() => new(
        new("supply"),
        "supply",
        900.G,
        SupplyMount.Under,
        new(180.Mm, 90.Mm, 40.Mm),
        [
            .. Enumerable.Range(1, 6).Select(i => new Outlet($"{i}", [9.V], 100.MilliA)),
            .. Enumerable.Range(7, 4).Select(i => new Outlet($"{i}", [9.V, 12.V], 250.MilliA)),
            .. Enumerable.Range(11, 2).Select(i => new Outlet($"{i}", [9.V, 12.V, 18.V], 500.MilliA)),
        ]);

    private Device Device(int index, string role)
    {
        var (width, depth) = Footprint();
        var sideJacks = random.Next(3) < 2;
        var height = random.Next(35, 61);
        return new(
            new($"d{index}"),
            $"{role} {index}",
            new(width.Mm, depth.Mm, height.Mm),
            random.Next(250, 900).G,
            random.Next(6) > 0 ? [Turn.None] : [Turn.None, Turn.Quarter],
            Power(role),
            sideJacks ? SideJacks(depth) : RearJacks(width),
            random.Next(2) == 0 ? Bypass.True : Bypass.Buffered,
            [new((width / 2).Mm, 25.Mm)],
            Functions(role));
    }

    /// <summary>Width and depth in mm: a published list of box measures, varied by a few millimetres.</summary>
    private (int Width, int Depth) Footprint()
    {
        var (width, depth) = random.Next(20) switch
        {
            < 4 => (42, 93),
            < 7 => (60, 111),
            < 14 => (71, 124),
            < 16 => (84, 130),
            < 17 => (120, 95),
            < 18 => (140, 130),
            < 19 => (173, 130),
            _ => (95, 128),
        };
        return (width + random.Next(-2, 3), Math.Min(134, depth + random.Next(-3, 4)));
    }

    /// <summary>Milliamps as makers state them: analogue drives 4–10, tuners about 30, gates about 35, delays 55–65, loopers about 170, digital boxes 80–300.</summary>
    private PowerNeed Power(string role)
    {
        var digital = random.Next(3) == 0;
        var draw = role switch
        {
            _ when digital => random.Next(80, 301),
            "tuner" => 30,
            "gate" => 35,
            "looper" => 170,
            "delay" or "reverb" => random.Next(55, 66),
            _ => random.Next(4, 11),
        };
        return random.Next(12) == 0 ? new(12.V, 18.V, draw.MilliA) : new(9.V, random.Next(4) == 0 ? 18.V : 9.V, draw.MilliA);
    }

    private ValueList<RoleFunction> Functions(string role)
    {
        var own = new RoleFunction(new(role), random.Next(2, 6));
        return random.Next(6) == 0
            ? [own, new(new(Wants[random.Next(Wants.Length)]), random.Next(1, 5), random.Next(2) == 0 ? "mode" : null)]
            : [own];
    }

    private ValueList<Jack> SideJacks(int depth)
    {
        var at = (depth / 2) + random.Next(-10, 20);
        return [new(JackUse.In, Side.Right, at.Mm), new(JackUse.Out, Side.Left, at.Mm), random.Next(2) == 0 ? new(JackUse.Power, Side.Rear, 20.Mm) : new(JackUse.Power, Side.Left, (at + 25).Mm)];
    }

    private static ValueList<Jack> RearJacks(int width) =>
        [new(JackUse.In, Side.Rear, (width - 9).Mm), new(JackUse.Out, Side.Rear, 9.Mm), new(JackUse.Power, Side.Rear, (width / 2).Mm)];
}
