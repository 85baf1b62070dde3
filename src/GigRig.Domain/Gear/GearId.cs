namespace GigRig.Domain.Gear;

/// <summary>Names one owned thing within a library or a problem. 1–100 characters, no control characters.</summary>
public readonly record struct GearId(string Value) : IComparable<GearId>
{
    public const int MaxLength = 100;

    public int CompareTo(GearId other) => string.CompareOrdinal(Value, other.Value);

    public override string ToString() => Value;
}
