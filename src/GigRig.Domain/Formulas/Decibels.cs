namespace GigRig.Domain.Formulas;

/// <summary>Ratios on the ear's scale (textbook definition): +6.02 dB for twice the voltage, −3.01 dB at a filter's corner.</summary>
public static class Decibels
{
    /// <param name="ratio">Of two voltages, above 0.</param>
    public static double OfVoltages(double ratio) => 20 * Math.Log10(ratio);
}
