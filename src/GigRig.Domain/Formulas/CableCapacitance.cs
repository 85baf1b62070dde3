using GigRig.Domain.Units;

namespace GigRig.Domain.Formulas;

/// <summary>
/// What a pickup has to drive, in picofarads: its own winding, the leads up to the first buffer, and what plugs and boxes between them add.
/// Leads after a buffer do not count.
/// </summary>
public static class CableCapacitance
{
    /// <param name="length">0 or more.</param>
    /// <param name="perMetre">pF/m; 52–200 for instrument leads (electronics article and two players' articles).</param>
    public static decimal OfLead(Millimetres length, int perMetre) => length.Value * (decimal)perMetre / 1000;

    /// <param name="strays">Of each lead and box.</param>
    public static decimal Total(decimal winding, IEnumerable<decimal> strays) => winding + strays.Sum();
}
