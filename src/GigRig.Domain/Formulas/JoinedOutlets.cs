using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Formulas;

/// <summary>
/// What outlets give together. In parallel the currents add at one voltage (bench-supply note); in series the voltages add and the lesser current counts
/// (power-supply glossary). Whether they may be joined at all is a rule's part.
/// </summary>
public static class JoinedOutlets
{
    /// <summary>Their sum in series, else the first; zero without any.</summary>
    public static Millivolts Volts(OutletJoin join, IEnumerable<Millivolts> settings) => join == OutletJoin.Series
        ? settings.Aggregate(Millivolts.Zero, (sum, volts) => sum + volts)
        : settings.FirstOrDefault();

    /// <summary>Their sum in parallel, the least in series, the first alone; zero without any.</summary>
    public static Milliamps Current(OutletJoin join, IEnumerable<Milliamps> currents) => join switch
    {
        OutletJoin.Parallel => currents.Aggregate(Milliamps.Zero, (sum, current) => sum + current),
        OutletJoin.Series => currents.DefaultIfEmpty().Min(),
        _ => currents.FirstOrDefault(),
    };
}
