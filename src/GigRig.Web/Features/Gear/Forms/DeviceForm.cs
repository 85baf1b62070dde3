using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Guessing;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>A jack of a device, as typed.</summary>
public sealed class JackRow
{
    public JackUse Use { get; set; }

    public Side Side { get; set; }

    public string At { get; set; } = "";
}

/// <summary>A foot switch of a device, as typed: its centre from the front-left corner.</summary>
public sealed class SwitchRow
{
    public string X { get; set; } = "";

    public string Y { get; set; } = "";
}

public sealed class DeviceForm : GearForm<Device>
{
    public string Width { get; set; } = "";

    public string Depth { get; set; } = "";

    public string Height { get; set; } = "";

    public int? Mass { get; set; } = 400;

    /// <summary>Whether it may also stand turned by a quarter, half or three quarters.</summary>
    public List<Turn> Turns { get; set; } = [Turn.None];

    public PowerRow? Power { get; set; } = new();

    public List<JackRow> Jacks { get; set; } = [];

    public Bypass Bypass { get; set; }

    public bool WantsBarePickup { get; set; }

    public SignalLevel InputLevel { get; set; }

    public List<SwitchRow> Switches { get; set; } = [];

    public List<FunctionRow> Functions { get; set; } = [new()];

    public override IEnumerable<string> UsedRoles => Functions.Select(row => row.Role);

    protected override string PlaceInDocument => "devices/0";

    /// <summary>Fills in the size of a generic enclosure, and where its jacks usually are. All of it is a guess.</summary>
    public void StartFrom(EnclosureShape shape)
    {
        (Width, Depth, Height) = (Length(shape.Size.Width), Length(shape.Size.Depth), Length(shape.Size.Height));
        Mass = shape.Mass.Value;
        Jacks = [.. shape.Jacks.Select(Show)];
        Switches = [.. shape.Switches.Select(Show)];
        Guesses = [.. Guesses.Union([Guess.Size, Guess.Height, Guess.Mass, Guess.Jacks, Guess.Switches]).Order()];
        Check();
    }

    protected override void Show(Device device)
    {
        Name = device.Name;
        (Width, Depth, Height) = (Length(device.Size.Width), Length(device.Size.Depth), Length(device.Size.Height));
        Mass = device.Mass.Value;
        Turns = [.. device.Turns];
        Power = device.Power is { } need ? PowerRow.Show(need) : null;
        Jacks = [.. device.Jacks.Select(Show)];
        Bypass = device.Bypass;
        WantsBarePickup = device.WantsBarePickup;
        InputLevel = device.InputLevel;
        Switches = [.. device.Switches.Select(Show)];
        Functions = FunctionEntries.Show(device.Functions);
    }

    protected override Device Read(EntryReader read) => new(
        Unnamed,
        read.Name("name", "Name", Name),
        new(read.Length("width", "Width", Width), read.Length("depth", "Depth", Depth), read.Length("height", "Height", Height)),
        Grams.From(read.Whole("mass", "Mass", Mass)),
        Turns.Order().ToValueList(),
        Power?.Read(read),
        Jacks.Select((jack, i) => new Jack(jack.Use, jack.Side, read.Length($"jacks/{i}/at", "Place", jack.At))).ToValueList(),
        Bypass,
        Switches.Select((s, i) => new Point(read.Length($"switches/{i}/x", "From the left", s.X), read.Length($"switches/{i}/y", "From the front", s.Y))).ToValueList(),
        FunctionEntries.Read(Functions, read),
        WantsBarePickup,
        InputLevel);

    protected override IEnumerable<Complaint> Complaints(Device device) => ThingCheck.Of(device);

    private JackRow Show(Jack jack) => new() { Use = jack.Use, Side = jack.Side, At = Length(jack.At) };

    private SwitchRow Show(Point at) => new() { X = Length(at.X), Y = Length(at.Y) };
}
