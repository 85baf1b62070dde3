namespace GigRig.Domain.Formulas;

/// <summary>
/// What a pickup has to drive, in picofarads: its own winding, the leads up to the first buffer, and what plugs and boxes between them add.
/// Leads after a buffer do not count.
/// </summary>
public static class CableCapacitance
{
    /// <param name="metres">0 or more.</param>
    /// <param name="picofaradsPerMetre">52–200 for instrument leads (electronics article and two players' articles).</param>
    public static double OfLead(double metres, double picofaradsPerMetre) => metres * picofaradsPerMetre;

    /// <param name="strays">Of each lead, plug and box.</param>
    public static double Total(double winding, IEnumerable<double> strays) => winding + strays.Sum();
}
