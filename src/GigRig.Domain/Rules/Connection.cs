using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules;

/// <summary>A device on one or more outlets. Feeds from a battery, of unknown or passive devices, and unknown outlets are left out; other rules name them.</summary>
internal sealed record Connection(Feed Feed, Device Device, PowerNeed Need, Milliamps Draw, ValueList<Outlet> Outlets)
{
    public bool Joined => Feed.Join != OutletJoin.Single;

    public static IReadOnlyList<Connection> In(RigProblem problem, Rig rig)
    {
        var connections = new List<Connection>();
        foreach (var feed in rig.HookUp)
            if (problem.FindDevice(feed.Device) is { Power: { } need } device && OutletsOf(problem, feed) is { Count: > 0 } outlets)
                connections.Add(new(feed, device, need, need.DrawWith(problem.Options.Headroom), outlets));
        return connections;
    }

    /// <summary>The connections at each outlet in use, in the supply's order.</summary>
    public static IEnumerable<(Outlet Outlet, List<Connection> Connections)> ByOutlet(RigProblem problem, Rig rig)
    {
        var all = In(problem, rig);
        return (problem.Supply?.Outlets ?? [])
            .Select(outlet => (outlet, all.Where(connection => connection.Outlets.Contains(outlet)).ToList()))
            .Where(pair => pair.Item2.Count > 0);
    }

    private static ValueList<Outlet> OutletsOf(RigProblem problem, Feed feed) =>
        feed.Outlets.Select(problem.FindOutlet).OfType<Outlet>().ToValueList();
}
