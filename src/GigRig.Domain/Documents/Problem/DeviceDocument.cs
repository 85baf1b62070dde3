using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("An owned device that may go on the board. Millimetres and grams, unturned.")]
public sealed record DeviceDocument
{
    [Within(1, GearId.MaxLength)]
    public required string Id { get; init; }

    [Description("Absent: its id.")]
    [Within(1, Bounds.LongestName)]
    public string? Name { get; init; }

    [Within(Bounds.LeastSize, Bounds.MostSize)]
    public required int Width { get; init; }

    [Within(Bounds.LeastSize, Bounds.MostSize)]
    public required int Depth { get; init; }

    [Description("Absent: 1, which any lid clears.")]
    [Within(Bounds.LeastSize, Bounds.MostSize)]
    public int Height { get; init; } = 1;

    [Within(0, Bounds.MostMass)]
    public int Mass { get; init; }

    [Description("Allowed turns, clockwise seen from above: 0, 90, 180, 270. Absent: 0 only.")]
    [RightAngle]
    [Within(1, 4)]
    public IReadOnlyList<int> Turns { get; init; } = [0];

    [Description("Absent: passive.")]
    public PowerDocument? Power { get; init; }

    [Description("Absent: a bare rectangle, nothing reserved beside the body.")]
    [Within(0, Bounds.MostJacks)]
    public IReadOnlyList<JackDocument>? Jacks { get; init; }

    public Bypass Bypass { get; init; }

    [Description("Centres of the foot switches, from the front-left corner of the unturned body.")]
    [Within(0, Bounds.MostSwitches)]
    public IReadOnlyList<PointDocument>? Switches { get; init; }

    [Within(0, Bounds.MostFunctions)]
    public IReadOnlyList<FunctionDocument>? Functions { get; init; }

    [Description("Whether nothing that buffers may stand between pickup and input.")]
    public bool WantsBarePickup { get; init; }

    [Description("The strongest signal its input is made for.")]
    public SignalLevel InputLevel { get; init; }

    public static DeviceDocument Of(Device device) => new()
    {
        Id = device.Id.Value,
        Name = device.Name,
        Width = device.Size.Width.Value,
        Depth = device.Size.Depth.Value,
        Height = device.Size.Height.Value,
        Mass = device.Mass.Value,
        Turns = [.. device.Turns.Select(turn => (int)turn)],
        Power = device.Power is { } power ? PowerDocument.Of(power) : null,
        Jacks = device.Jacks.OrNothing(JackDocument.Of),
        Bypass = device.Bypass,
        Switches = device.Switches.OrNothing(PointDocument.Of),
        Functions = device.Functions.OrNothing(FunctionDocument.Of),
        WantsBarePickup = device.WantsBarePickup,
        InputLevel = device.InputLevel,
    };

    public Device ToDevice() => new(
        new(Id),
        Name ?? Id,
        new(Width.Mm, Depth.Mm, Height.Mm),
        Mass.G,
        Turns.ToValues(turn => (Turn)turn),
        Power?.ToPower(),
        Jacks.ToValues(jack => jack.ToJack()),
        Bypass,
        Switches.ToValues(point => point.ToPoint()),
        Functions.ToValues(function => function.ToFunction()),
        WantsBarePickup,
        InputLevel);
}
