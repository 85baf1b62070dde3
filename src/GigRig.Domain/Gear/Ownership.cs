namespace GigRig.Domain.Gear;

/// <summary>Whether a thing can come along. Only <see cref="Ready"/> things are offered to the planner.</summary>
public enum GearStatus
{
    Ready,
    LentOut,
    InRepair,
    Gone,
}

/// <summary>What the owner keeps about a thing beside its facts. Never part of a problem; on a shared page only where the owner ticked it.</summary>
/// <param name="ValueCents">What it is worth in hundredths of the owner's currency; null where not said.</param>
public sealed record Ownership(GearStatus Status = GearStatus.Ready, string Note = "", int? ValueCents = null)
{
    /// <summary>The owner's own words for finding it: at most 20, each 1–40 characters, none twice whatever its case.</summary>
    public ValueList<string> Tags { get; init; }

    /// <summary>Who has it; empty where nobody has, or nobody said.</summary>
    public string LentTo { get; init; } = "";

    /// <summary>When it is due back; null where not said.</summary>
    public DateOnly? BackOn { get; init; }

    /// <summary>The facts the owner did not give and the app filled in, in the order of <see cref="Guess"/>, none twice.</summary>
    public ValueList<Guess> Guesses { get; init; }
}
