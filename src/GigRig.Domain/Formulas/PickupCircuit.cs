namespace GigRig.Domain.Formulas;

/// <summary>
/// A magnetic pickup on full volume with what hangs on it: a coil with its wire's resistance in series, then capacitance and a resistive load side by side.
/// A second-order low-pass with a peak. Leaves out eddy losses, the tone control and the skew between strings, so it shows how much a lead changes, not what an instrument sounds like.
/// </summary>
/// <param name="Henries">Of the coil, above 0; 1–10 for magnetic pickups (H. Lemme, as quoted).</param>
/// <param name="Ohms">Of the coil's wire, 0 or more.</param>
/// <param name="Farads">Winding and leads up to the first buffer, above 0.</param>
/// <param name="LoadOhms">Volume control and input side by side, above 0.</param>
public readonly record struct PickupCircuit(double Henries, double Ohms, double Farads, double LoadOhms)
{
    /// <summary>Loaded resonance in Hz: 1/(2π√(LC)) (pickup articles; textbook).</summary>
    public double Resonance => 1 / (2 * Math.PI * Math.Sqrt(Henries * Farads));

    /// <summary>How sharp the coil alone would peak: √(L/C)/R (LaForest, measuring pickups). Infinite without wire resistance.</summary>
    public double CoilQ => Math.Sqrt(Henries / Farads) / Ohms;

    /// <summary>How sharp it peaks with its load: coil and load each damp it.</summary>
    public double LoadedQ => 1 / ((1 / CoilQ) + (Math.Sqrt(Henries / Farads) / LoadOhms));

    /// <summary>What is left of the coil's voltage at <paramref name="hertz"/>, in dB; above 0 around the peak.</summary>
    public double DecibelsAt(double hertz)
    {
        var w = 2 * Math.PI * hertz;
        var inPhase = 1 + (Ohms / LoadOhms) - (w * w * Henries * Farads);
        var across = w * ((Henries / LoadOhms) + (Ohms * Farads));
        return Decibels.OfVoltages(1 / Math.Sqrt((inPhase * inPhase) + (across * across)));
    }

    /// <param name="picofarads">Of winding and leads.</param>
    /// <param name="volume">Ω of the volume control, side by side with <paramref name="input"/>.</param>
    public static PickupCircuit Of(int millihenries, int ohms, decimal picofarads, int volume, int input) =>
        new(millihenries / 1000.0, ohms, (double)picofarads * 1e-12, Parallel(volume, input));

    /// <summary>The geometric middle of two: its resonance lies in the middle of theirs, as the ear counts.</summary>
    public static PickupCircuit Between(PickupCircuit one, PickupCircuit other) => new(
        Math.Sqrt(one.Henries * other.Henries),
        Math.Sqrt(one.Ohms * other.Ohms),
        Math.Sqrt(one.Farads * other.Farads),
        Math.Sqrt(one.LoadOhms * other.LoadOhms));

    /// <summary>Resistances side by side.</summary>
    public static double Parallel(double first, double second) => first * second / (first + second);
}
