using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Feeding;

internal sealed class OutletJoiningRule : IRule
{
    public string Id => RuleIds.OutletJoining;

    public string Sentence => "Only isolated DC outlets of one polarity are joined: two or more at one voltage in parallel, or two in series.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        from connection in Connection.In(problem, rig)
        from fault in Faults(problem.Supply!, connection)
        select new Violation(Id, [connection.Device.Id], "", $"{connection.Device.Name} is fed from {connection.Feed.Outlets.Select(outlet => $"outlet {outlet}").Listed()}: {fault}.");

    private static IEnumerable<string> Faults(Supply supply, Connection connection)
    {
        var (feed, outlets) = (connection.Feed, connection.Outlets);
        if (WrongCount(feed) is { } count)
            yield return count;
        if (feed.Outlets.Distinct().Count() < feed.Outlets.Count)
            yield return "an outlet cannot be joined with itself";
        if (!connection.Joined)
            yield break;
        foreach (var outlet in outlets.Where(outlet => !supply.IsIsolated(outlet)))
            yield return $"outlet {outlet.Id} shares its return and cannot be joined";
        foreach (var outlet in outlets.Where(outlet => outlet.Type == CurrentType.Ac))
            yield return $"outlet {outlet.Id} gives AC and cannot be joined";
        if (outlets.Select(outlet => outlet.Polarity).Distinct().Count() > 1)
            yield return "joined outlets must be of one polarity";
        if (feed.Join == OutletJoin.Parallel && feed.Settings.Distinct().Count() > 1)
            yield return "outlets in parallel must be set to one voltage";
    }

    private static string? WrongCount(Feed feed) => feed.Join switch
    {
        OutletJoin.Single when feed.Outlets.Count > 1 => "several outlets must be joined in parallel or in series",
        OutletJoin.Parallel when feed.Outlets.Count < 2 => "a parallel join takes at least two",
        OutletJoin.Series when feed.Outlets.Count != 2 => "a series join takes exactly two",
        _ => null,
    };
}
