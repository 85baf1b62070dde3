namespace GigRig.Domain.Units;

/// <summary>A length, whole millimetres. Any int may be held; the limits are those of the thing measured and are checked by <c>RigProblem.Create</c>. <c>default</c> is zero.</summary>
public readonly record struct Millimetres : IComparable<Millimetres>
{
    private Millimetres(int value) => Value = value;

    public static Millimetres Zero => default;

    /// <summary>The count of millimetres.</summary>
    public int Value { get; }

    public static Millimetres From(int value) => new(value);

    public int CompareTo(Millimetres other) => Value.CompareTo(other.Value);

    public static Millimetres operator +(Millimetres left, Millimetres right) => new(left.Value + right.Value);

    public static Millimetres operator -(Millimetres left, Millimetres right) => new(left.Value - right.Value);

    public static Millimetres operator -(Millimetres value) => new(-value.Value);

    public static bool operator <(Millimetres left, Millimetres right) => left.Value < right.Value;

    public static bool operator >(Millimetres left, Millimetres right) => left.Value > right.Value;

    public static bool operator <=(Millimetres left, Millimetres right) => left.Value <= right.Value;

    public static bool operator >=(Millimetres left, Millimetres right) => left.Value >= right.Value;

    public override string ToString() => $"{Value} mm";
}
