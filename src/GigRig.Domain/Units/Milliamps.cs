namespace GigRig.Domain.Units;

/// <summary>A current, whole milliamps. Any int may be held; the limits are those of the thing measured and are checked by <c>RigProblem.Create</c>. <c>default</c> is zero.</summary>
public readonly record struct Milliamps : IComparable<Milliamps>
{
    private Milliamps(int value) => Value = value;

    public static Milliamps Zero => default;

    /// <summary>The count of milliamps.</summary>
    public int Value { get; }

    public static Milliamps From(int value) => new(value);

    public int CompareTo(Milliamps other) => Value.CompareTo(other.Value);

    public static Milliamps operator +(Milliamps left, Milliamps right) => new(left.Value + right.Value);

    public static Milliamps operator -(Milliamps left, Milliamps right) => new(left.Value - right.Value);

    public static bool operator <(Milliamps left, Milliamps right) => left.Value < right.Value;

    public static bool operator >(Milliamps left, Milliamps right) => left.Value > right.Value;

    public static bool operator <=(Milliamps left, Milliamps right) => left.Value <= right.Value;

    public static bool operator >=(Milliamps left, Milliamps right) => left.Value >= right.Value;

    public override string ToString() => $"{Value} mA";
}
