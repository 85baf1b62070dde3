using GigRig.Domain.Units;

namespace GigRig.Domain.Gear;

/// <summary>The four kinds of lead a rig is wired with.</summary>
public enum LeadKind
{
    Patch,
    Instrument,
    Loop,
    Power,
}

/// <summary>The plug at an end of a lead; decides how far it sticks out.</summary>
public enum PlugShape
{
    Straight,
    Angled,
    Slim,
}

/// <summary>Some number of equal owned leads.</summary>
/// <param name="Length">Of the cable between the plugs, 1 mm to 100 m.</param>
/// <param name="Count">1–999.</param>
/// <param name="Capacitance">Picofarads for each metre, 1–10 000; null where not said. Dulls the sound of a passive instrument.</param>
public sealed record Lead(
    GearId Id, string Name, LeadKind Kind, Millimetres Length, PlugShape FirstPlug, PlugShape SecondPlug, int Count, int? Capacitance = null);
