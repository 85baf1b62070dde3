using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class OutletCurrentRule : IRule
{
    public string Id => RuleIds.OutletCurrent;

    public string Sentence => "No outlet is asked for more current than it can give, headroom included.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        foreach (var (outlet, all) in Connection.ByOutlet(problem, rig))
        {
            var singles = all.Where(connection => !connection.Joined).ToList();
            var load = singles.Aggregate(Milliamps.Zero, (sum, connection) => sum + connection.Draw);
            if (load > outlet.Current)
                yield return Overloaded(singles, load, outlet.Current, $"outlet {outlet.Id} gives");
        }

        foreach (var joined in Connection.In(problem, rig).Where(connection => connection.Joined))
        {
            var gives = joined.Feed.Join == OutletJoin.Series
                ? joined.Outlets.Min(outlet => outlet.Current)
                : joined.Outlets.Aggregate(Milliamps.Zero, (sum, outlet) => sum + outlet.Current);
            if (joined.Draw > gives)
                yield return Overloaded([joined], joined.Draw, gives, $"outlets {joined.Feed.Outlets.Listed()} together give");
        }
    }

    private Violation Overloaded(IReadOnlyList<Connection> connections, Milliamps load, Milliamps gives, string what) => new(
        Id,
        connections.Select(connection => connection.Device.Id).ToValueList(),
        $"{load - gives}",
        $"{connections.Select(connection => connection.Device.Name).Listed()} {(connections.Count == 1 ? "draws" : "draw")} {load}; {what} {gives}.");
}
