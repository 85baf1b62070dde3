namespace GigRig.Domain.Gear;

/// <summary>What decides how an instrument is wired: basses keep their lows, keyboards give line level in stereo.</summary>
public enum InstrumentFamily
{
    Guitar,
    Bass,
    Keyboard,
    Other,
}

/// <summary>The electric side of an instrument. Null where the owner has not said.</summary>
/// <param name="Inductance">Of the pickup, millihenries, 1–100 000.</param>
/// <param name="Capacitance">Of the pickup's winding, picofarads, 0–100 000.</param>
/// <param name="Volume">Resistance of the volume control, ohms, 1–10 000 000.</param>
/// <param name="Active">Whether a preamp in the instrument drives the lead.</param>
public sealed record Pickup(int? Inductance = null, int? Capacitance = null, int? Volume = null, bool? Active = null)
{
    public static Pickup Unknown { get; } = new();
}

/// <summary>What is played.</summary>
/// <param name="Kind">In the owner's words.</param>
public sealed record Instrument(GearId Id, string Name, string Kind, InstrumentFamily Family = InstrumentFamily.Guitar)
{
    public Pickup Pickup { get; init; } = Pickup.Unknown;
}
