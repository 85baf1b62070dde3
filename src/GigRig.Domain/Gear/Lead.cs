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
/// <param name="Count">1–999.</param>
public sealed record Lead(GearId Id, string Name, LeadKind Kind, Millimetres Length, PlugShape FirstPlug, PlugShape SecondPlug, int Count);

/// <summary>What is played. Used by the stage sheet and the tone of the long lead.</summary>
public sealed record Instrument(GearId Id, string Name, string Kind);
