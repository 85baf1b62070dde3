using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class OutletPolarityRule : IRule
{
    public string Id => RuleIds.OutletPolarity;

    public string Sentence => "The polarity that arrives is the one the device asks for.";

    /// <summary>Alternating current has none, so it is passed over.</summary>
    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        from connection in Connection.In(problem, rig)
        where connection.Need.Type == CurrentType.Dc
        from outlet in connection.Outlets
        where outlet.Type == CurrentType.Dc && (outlet.Polarity != connection.Need.Polarity) != connection.Feed.Reversed
        select new Violation(Id, [connection.Device.Id], "", Explain(connection, outlet));

    private static string Explain(Connection connection, Outlet outlet) => connection.Feed.Reversed
        ? $"{connection.Device.Name} is centre {Word(connection.Need.Polarity)} as outlet {outlet.Id} is; the reversing lead must go."
        : $"{connection.Device.Name} is centre {Word(connection.Need.Polarity)}; outlet {outlet.Id} is centre {Word(outlet.Polarity)}. A reversing lead is missing.";

    private static string Word(Polarity polarity) => polarity == Polarity.Positive ? "positive" : "negative";
}
