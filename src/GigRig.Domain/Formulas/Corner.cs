namespace GigRig.Domain.Formulas;

/// <summary>
/// Where a resistive source begins to lose treble into a capacitance: 1/(2πRC), where 1/√2 is left (textbook exercises). For a buffer's output and a lead after it.
/// Never for a passive pickup, which is a coil: its winding resistance in this formula promises treble up to 15 kHz that is not there. See <see cref="PickupCircuit"/>.
/// </summary>
public static class Corner
{
    /// <param name="ohms">Of the source, above 0.</param>
    /// <param name="farads">Above 0.</param>
    public static double Hertz(double ohms, double farads) => 1 / (2 * Math.PI * ohms * farads);
}
