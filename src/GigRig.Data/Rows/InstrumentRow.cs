using GigRig.Domain.Gear;

namespace GigRig.Data.Rows;

internal sealed class InstrumentRow : GearRow<Instrument>
{
    public string Kind { get; set; } = "";

    public InstrumentFamily Family { get; set; }

    /// <summary>Millihenries.</summary>
    public int? PickupInductance { get; set; }

    /// <summary>Picofarads.</summary>
    public int? PickupCapacitance { get; set; }

    /// <summary>Ohms.</summary>
    public int? Volume { get; set; }

    public bool? Active { get; set; }

    public override string Title => $"instrument \"{Name}\"";

    protected override void SetThing(Instrument thing)
    {
        (Name, Kind, Family) = (thing.Name, thing.Kind, thing.Family);
        (PickupInductance, PickupCapacitance, Volume, Active) = thing.Pickup;
    }

    protected override Instrument ToThing() =>
        new(GearId, Name, Kind, Family) { Pickup = new(PickupInductance, PickupCapacitance, Volume, Active) };
}
