namespace GigRig.Domain.Units;

/// <summary>A voltage, whole millivolts. Any int may be held; the limits are those of the thing measured and are checked by <c>RigProblem.Create</c>. <c>default</c> is zero.</summary>
public readonly record struct Millivolts : IComparable<Millivolts>
{
    private Millivolts(int value) => Value = value;

    public static Millivolts Zero => default;

    /// <summary>The count of millivolts.</summary>
    public int Value { get; }

    public static Millivolts From(int value) => new(value);

    public int CompareTo(Millivolts other) => Value.CompareTo(other.Value);

    public static Millivolts operator +(Millivolts left, Millivolts right) => new(left.Value + right.Value);

    public static Millivolts operator -(Millivolts left, Millivolts right) => new(left.Value - right.Value);

    public static bool operator <(Millivolts left, Millivolts right) => left.Value < right.Value;

    public static bool operator >(Millivolts left, Millivolts right) => left.Value > right.Value;

    public static bool operator <=(Millivolts left, Millivolts right) => left.Value <= right.Value;

    public static bool operator >=(Millivolts left, Millivolts right) => left.Value >= right.Value;

    public override string ToString() => $"{(Value / 1000m).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture)} V";
}
