using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class AdapterLeadsRule : IRule
{
    public string Id => RuleIds.AdapterLeads;

    public string Sentence => "No more power adapter leads are used than are owned.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        var owned = problem.Adapters;
        var used = AdaptersUsed(problem, rig);
        (string Kind, int Used, int Owned)[] kinds =
        [
            ("polarity-reversing", used.Reverse, owned.Reverse),
            ("parallel", used.Parallel, owned.Parallel),
            ("series", used.Series, owned.Series),
            ("splitter", used.Splitter, owned.Splitter),
        ];
        return kinds.Where(kind => kind.Used > kind.Owned).Select(kind => new Violation(
            Id,
            [],
            (kind.Used - kind.Owned).Counted("lead"),
            $"The hook-up takes {kind.Used.Counted($"{kind.Kind} lead")}; {(kind.Owned == 0 ? "none is" : kind.Owned == 1 ? "1 is" : $"{kind.Owned} are")} owned."));
    }

    /// <summary>Feeding one more device from an outlet takes a splitter more; joining one more outlet takes a join lead more.</summary>
    private static PowerAdapters AdaptersUsed(RigProblem problem, Rig rig)
    {
        var connections = Connection.In(problem, rig);
        return new(
            connections.Count(connection => connection.Feed.Reversed),
            connections.Where(connection => connection.Feed.Join == OutletJoin.Parallel).Sum(connection => connection.Feed.Outlets.Count - 1),
            connections.Count(connection => connection.Feed.Join == OutletJoin.Series),
            Connection.ByOutlet(problem, rig).Sum(pair => pair.Connections.Count - 1));
    }
}
