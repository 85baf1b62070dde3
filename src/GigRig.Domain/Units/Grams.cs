namespace GigRig.Domain.Units;

/// <summary>A mass, whole grams. Any int may be held; the limits are those of the thing measured and are checked by <c>RigProblem.Create</c>. <c>default</c> is zero.</summary>
public readonly record struct Grams : IComparable<Grams>
{
    private Grams(int value) => Value = value;

    public static Grams Zero => default;

    /// <summary>The count of grams.</summary>
    public int Value { get; }

    public static Grams From(int value) => new(value);

    public int CompareTo(Grams other) => Value.CompareTo(other.Value);

    public static Grams operator +(Grams left, Grams right) => new(left.Value + right.Value);

    public static Grams operator -(Grams left, Grams right) => new(left.Value - right.Value);

    public static bool operator <(Grams left, Grams right) => left.Value < right.Value;

    public static bool operator >(Grams left, Grams right) => left.Value > right.Value;

    public static bool operator <=(Grams left, Grams right) => left.Value <= right.Value;

    public static bool operator >=(Grams left, Grams right) => left.Value >= right.Value;

    public override string ToString() => $"{Value} g";
}
