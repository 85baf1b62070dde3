using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

internal sealed class DeviceRow : GearRow<Device>
{
    public SizeRow Size { get; set; } = new();

    public int MassGrams { get; set; }

    /// <summary>Degrees.</summary>
    public List<int> Turns { get; set; } = [];

    public PowerRow? Power { get; set; }

    public Bypass Bypass { get; set; }

    public List<JackRow> Jacks { get; set; } = [];

    public List<SwitchRow> Switches { get; set; } = [];

    public List<FunctionRow> Functions { get; set; } = [];

    public bool WantsBarePickup { get; set; }

    public SignalLevel InputLevel { get; set; }

    public override string Title => $"device \"{Name}\"";

    protected override void SetThing(Device thing)
    {
        Name = thing.Name;
        Size = SizeRow.From(thing.Size);
        MassGrams = thing.Mass.Value;
        Turns = [.. thing.Turns.Select(turn => (int)turn)];
        Power = thing.Power is { } need ? PowerRow.From(need) : null;
        Bypass = thing.Bypass;
        Jacks = [.. thing.Jacks.Select(JackRow.From)];
        Switches = [.. thing.Switches.Select(SwitchRow.From)];
        Functions = FunctionRow.From(thing.Functions);
        WantsBarePickup = thing.WantsBarePickup;
        InputLevel = thing.InputLevel;
    }

    protected override Device ToThing() => new(
        GearId,
        Name,
        Size.ToSize(),
        MassGrams.G,
        Turns.Select(degrees => (Turn)degrees).ToValueList(),
        Power?.ToNeed(),
        Jacks.Select(jack => jack.ToJack()).ToValueList(),
        Bypass,
        Switches.Select(point => point.ToPoint()).ToValueList(),
        FunctionRow.To(Functions),
        WantsBarePickup,
        InputLevel);
}
