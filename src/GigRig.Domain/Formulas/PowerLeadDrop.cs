namespace GigRig.Domain.Formulas;

/// <summary>
/// What is lost in the two conductors of a power lead (an electrician's text after a wiring code). On a board it matters only for long thin chains with
/// hungry devices; worn contacts usually lose more (common practice, no source).
/// </summary>
public static class PowerLeadDrop
{
    /// <summary>
    /// Ω/m of one conductor of 24 AWG copper at 20 °C: 25.67 Ω per 1000 ft, a physics reference table after Floyd, <em>Electric Circuit Fundamentals</em>.
    /// What power leads of boards are made of: common practice, no source.
    /// </summary>
    public const double Awg24 = 25.67 / (1000 * MetresPerFoot);

    /// <summary>Exact by definition.</summary>
    public const double MetresPerFoot = 0.3048;

    /// <summary>Volts lost there and back.</summary>
    /// <param name="metres">One way, 0 or more.</param>
    /// <param name="ohmsPerMetre">Of one conductor, from a table rather than from a bulk constant, which runs 5 % low.</param>
    /// <param name="amps">0 or more.</param>
    public static double Volts(double metres, double ohmsPerMetre, double amps) => 2 * metres * ohmsPerMetre * amps;

    /// <summary>The lost part, 0–1, of what the outlet gives.</summary>
    public static double Part(double lost, double given) => lost / given;
}
