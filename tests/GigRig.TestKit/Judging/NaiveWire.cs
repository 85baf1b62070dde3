using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.TestKit.Judging;

/// <summary>A device that needs power on at least one outlet that exists.</summary>
internal sealed record Wire(Feed Feed, PowerNeed Need, int Draw, List<Outlet> Outlets)
{
    public static List<Wire> All(RigProblem problem, Rig rig)
    {
        var wires = new List<Wire>();
        foreach (var feed in rig.HookUp)
        {
            var need = problem.Devices.FirstOrDefault(d => d.Id.Value == feed.Device.Value)?.Power;
            var outlets = feed.Outlets.SelectMany(id => (problem.Supply?.Outlets ?? []).Where(o => o.Id == id)).ToList();
            if (need is not null && outlets.Count > 0)
                wires.Add(new(feed, need, (int)Math.Ceiling(need.Current.Value + need.Current.Value * problem.Options.Headroom), outlets));
        }

        return wires;
    }
}

/// <summary>Whether what comes down one wire is what the device can take.</summary>
internal static class NaiveWire
{
    public static IEnumerable<Fault> Faults(RigProblem problem, Wire wire)
    {
        var (feed, need, draw, outlets) = wire;
        var device = feed.Device.Value;
        var volts = feed.Settings.Select(v => v.Value).ToList();
        var arriving = volts.Count == 0 ? 0 : feed.Join == OutletJoin.Series ? volts.Sum() : volts[0];
        if (arriving < need.Min.Value || arriving > need.Max.Value)
            yield return new("outlet-voltage", device);
        if (outlets.Any(o => o.Type != need.Type))
            yield return new("outlet-kind", device);
        if (need.Type == CurrentType.Dc && outlets.Any(o => o.Type == CurrentType.Dc && (feed.Reversed ? o.Polarity == need.Polarity : o.Polarity != need.Polarity)))
            yield return new("outlet-polarity", device);
        if (!JoinIsSound(problem, feed, outlets))
            yield return new("outlet-joining", device);
        var gives = feed.Join switch
        {
            OutletJoin.Parallel => outlets.Sum(o => o.Current.Value),
            OutletJoin.Series => outlets.Min(o => o.Current.Value),
            _ => int.MaxValue,
        };
        if (draw > gives)
            yield return new("outlet-current", device);
    }

    private static bool JoinIsSound(RigProblem problem, Feed feed, List<Outlet> outlets)
    {
        var count = feed.Outlets.Count;
        if (feed.Outlets.ToHashSet().Count != count)
            return false;
        if (feed.Join == OutletJoin.Single)
            return count == 1;
        var countFits = feed.Join == OutletJoin.Series ? count == 2 : count >= 2;
        var alone = outlets.All(o => o.Group is null || problem.Supply!.Outlets.Count(p => p.Group == o.Group) == 1);
        var alike = outlets.All(o => o.Type == CurrentType.Dc && o.Polarity == outlets[0].Polarity);
        var level = feed.Join == OutletJoin.Series || feed.Settings.All(v => v.Value == feed.Settings[0].Value);
        return countFits && alone && alike && level;
    }
}
