namespace GigRig.Domain.Gear;

/// <summary>Whether a thing can come along. Only <see cref="Ready"/> things are offered to the planner.</summary>
public enum GearStatus
{
    Ready,
    LentOut,
    InRepair,
    Gone,
}

/// <summary>What the owner keeps about a thing beside its facts. Never part of a problem or of a shared page.</summary>
/// <param name="ValueCents">What it is worth in hundredths of the owner's currency; null where not said.</param>
public sealed record Ownership(GearStatus Status = GearStatus.Ready, string Note = "", int? ValueCents = null);
