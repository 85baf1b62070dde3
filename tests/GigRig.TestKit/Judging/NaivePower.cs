using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.TestKit.Judging;

/// <summary>Whether every device is fed, outlet by outlet.</summary>
internal static class NaivePower
{
    public static IEnumerable<Fault> Faults(RigProblem problem, Rig rig)
    {
        foreach (var fault in OfDevices(problem, rig))
            yield return fault;
        var wires = Wire.All(problem, rig);
        foreach (var wire in wires)
            foreach (var fault in NaiveWire.Faults(problem, wire))
                yield return fault;
        foreach (var outlet in problem.Supply?.Outlets ?? [])
            foreach (var fault in OfOutlet(problem, outlet, [.. wires.Where(w => w.Feed.Outlets.Contains(outlet.Id))]))
                yield return fault;
        if (TooManyLeads(problem, wires))
            yield return new("adapter-leads", "too few owned");
        if (problem.Supply?.TotalCurrent is { } total && wires.Sum(w => w.Feed.Join == OutletJoin.Series ? 2 * w.Draw : w.Draw) > total.Value)
            yield return new("total-current", "too much");
    }

    private static IEnumerable<Fault> OfDevices(RigProblem problem, Rig rig)
    {
        var placed = rig.Placements.Select(p => p.Id.Value).ToHashSet();
        foreach (var device in problem.Devices)
        {
            var feeds = rig.HookUp.Where(f => f.Device.Value == device.Id.Value).ToList();
            var fine = placed.Contains(device.Id.Value) && device.Power is { } need
                ? feeds.Count == 1 && (feeds[0].Outlets.Count > 0 || need.Battery)
                : feeds.Count == 0;
            if (!fine)
                yield return new("devices-fed", device.Id.Value);
            foreach (var feed in feeds.Where(f => !SettingsAreTrue(problem, f)))
                yield return new("outlet-setting", device.Id.Value);
        }
    }

    private static bool SettingsAreTrue(RigProblem problem, Feed feed)
    {
        if (feed.Settings.Count != feed.Outlets.Count)
            return false;
        for (var i = 0; i < feed.Outlets.Count; i++)
            if (problem.Supply?.Outlets.FirstOrDefault(o => o.Id == feed.Outlets[i]) is { } outlet && !outlet.Volts.Contains(feed.Settings[i]))
                return false;
        var arriving = feed.Settings.Count == 0 ? 0 : feed.Join == OutletJoin.Series ? feed.Settings.Sum(v => v.Value) : feed.Settings[0].Value;
        return feed.Volts.Value == arriving;
    }

    private static IEnumerable<Fault> OfOutlet(RigProblem problem, Outlet outlet, List<Wire> wires)
    {
        if (wires.Where(w => w.Feed.Join == OutletJoin.Single).Sum(w => w.Draw) > outlet.Current.Value)
            yield return new("outlet-current", outlet.Id);
        var isolated = problem.Supply!.Outlets.All(o => o.Id == outlet.Id || o.Group is null || o.Group != outlet.Group);
        var jealous = wires.Any(w => w.Need.Type == CurrentType.Dc && (w.Need.Polarity == Polarity.Positive || w.Feed.Reversed));
        if (jealous && (!isolated || wires.Count > 1))
            yield return new("isolated-outlet", outlet.Id);
        if (wires.Count < 2)
            yield break;
        var settings = wires.SelectMany(w => w.Feed.Outlets.Zip(w.Feed.Settings)).Where(p => p.First == outlet.Id).Select(p => p.Second.Value).Distinct();
        if (outlet.Type == CurrentType.Ac || wires.Any(w => w.Feed.Join != OutletJoin.Single) || settings.Count() > 1)
            yield return new("outlet-sharing", outlet.Id);
    }

    private static bool TooManyLeads(RigProblem problem, List<Wire> wires)
    {
        var uses = problem.Supply?.Outlets.Select(o => wires.Count(w => w.Feed.Outlets.Contains(o.Id))) ?? [];
        return wires.Count(w => w.Feed.Reversed) > problem.Adapters.Reverse
            || wires.Where(w => w.Feed.Join == OutletJoin.Parallel).Sum(w => w.Feed.Outlets.Count - 1) > problem.Adapters.Parallel
            || wires.Count(w => w.Feed.Join == OutletJoin.Series) > problem.Adapters.Series
            || uses.Where(n => n > 1).Sum(n => n - 1) > problem.Adapters.Splitter;
    }
}
