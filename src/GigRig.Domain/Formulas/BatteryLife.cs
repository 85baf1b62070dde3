using GigRig.Domain.Units;

namespace GigRig.Domain.Formulas;

/// <summary>From this many hours to that many.</summary>
public readonly record struct HoursRange(double Least, double Most);

/// <summary>
/// How long a battery lasts. A range, because what a battery gives falls as the draw rises and no published table pairs the two for floor devices: the lesser end
/// takes off <see cref="Derating"/>, the greater end takes capacity at its word. Cells scatter; a fresh spare is the real answer (an alarm-battery study reports early failures).
/// </summary>
public static class BatteryLife
{
    /// <summary>mAh that one maker's note counts on from a 9 V block. Common practice.</summary>
    public const int LeastCapacity = 310;

    /// <summary>mAh that another maker's note counts on. Common practice; reference lists give 550–600 for a fresh alkaline block at a small draw.</summary>
    public const int MostCapacity = 500;

    /// <summary>The part that is left under load. Common practice, a maker's note.</summary>
    public const double Derating = 0.70;

    /// <summary>Capacity over draw.</summary>
    /// <param name="capacity">mAh, above 0.</param>
    /// <param name="draw">mA, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is not above 0.</exception>
    public static double Hours(double capacity, double draw)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(capacity);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draw);
        return capacity / draw;
    }

    /// <summary>As <see cref="Hours"/>, less what a battery under load does not give.</summary>
    public static double DeratedHours(double capacity, double draw) => Hours(capacity, draw) * Derating;

    /// <param name="capacity">mAh as its owner says; null for a 9 V block of <see cref="LeastCapacity"/> to <see cref="MostCapacity"/>.</param>
    /// <param name="draw">Above 0.</param>
    public static HoursRange Range(int? capacity, Milliamps draw) =>
        new(DeratedHours(capacity ?? LeastCapacity, draw.Value), Hours(capacity ?? MostCapacity, draw.Value));
}
