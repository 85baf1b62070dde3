using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Documents.Problem;

[Description("What is played.")]
public sealed record InstrumentDocument
{
    public const string DefaultId = "instrument";

    [Within(1, GearId.MaxLength)]
    public string? Id { get; init; }

    [Within(1, Bounds.LongestName)]
    public string? Name { get; init; }

    [Description("In the owner's words.")]
    [Within(1, Bounds.LongestName)]
    public required string Kind { get; init; }

    public InstrumentFamily Family { get; init; }

    [Description("Absent: nothing is known of it.")]
    public PickupDocument? Pickup { get; init; }

    public static InstrumentDocument Of(Instrument instrument) => new()
    {
        Id = instrument.Id.Value,
        Name = instrument.Name,
        Kind = instrument.Kind,
        Family = instrument.Family,
        Pickup = PickupDocument.Of(instrument.Pickup),
    };

    public Instrument ToInstrument() =>
        new(new(Id ?? DefaultId), Name ?? Id ?? DefaultId, Kind, Family) { Pickup = Pickup?.ToPickup() ?? Gear.Pickup.Unknown };
}

[Description("The electric side of an instrument. What is absent is not known.")]
public sealed record PickupDocument
{
    [Description("Millihenries.")]
    [Within(1, Bounds.MostInductance)]
    public int? Inductance { get; init; }

    [Description("Of the winding, picofarads.")]
    [Within(0, Bounds.MostWindingCapacitance)]
    public int? Capacitance { get; init; }

    [Description("Of the volume control, ohms.")]
    [Within(1, Bounds.MostVolume)]
    public int? Volume { get; init; }

    [Description("Whether a preamp in the instrument drives the lead.")]
    public bool? Active { get; init; }

    internal static PickupDocument? Of(Pickup pickup) => pickup == Pickup.Unknown
        ? null
        : new() { Inductance = pickup.Inductance, Capacitance = pickup.Capacitance, Volume = pickup.Volume, Active = pickup.Active };

    internal Pickup ToPickup() => new(Inductance, Capacitance, Volume, Active);
}
