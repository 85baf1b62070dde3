using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>Tries every set of outlets, every join and every setting for every device. For a handful of outlets only.</summary>
internal sealed class EveryHookUp(RigProblem problem)
{
    private readonly HookUpJudge judge = new(problem);

    private ValueList<Outlet> Outlets => problem.Supply?.Outlets ?? [];

    /// <summary>How these devices are fed together; null where they cannot be.</summary>
    public IReadOnlyList<Feed>? Find(IEnumerable<GearId> devices)
    {
        var ways = devices.Where(id => problem.FindDevice(id)!.Power is not null).Select(id => WaysFor(id).Where(way => judge.Allows([way])).ToList()).OrderBy(w => w.Count).ToList();
        var found = new List<Feed>();
        return Plug(ways, found) ? found : null;
    }

    /// <summary>The fewest batteries, then splitters, then other adapter leads with which these devices can be fed together; null where they cannot be.</summary>
    public (int Batteries, int Splitters, int Others)? Fewest(IEnumerable<GearId> devices)
    {
        var ways = devices.Where(id => problem.FindDevice(id)!.Power is not null).Select(id => WaysFor(id).Where(way => judge.Allows([way])).ToList()).OrderBy(w => w.Count).ToList();
        (int, int, int)? best = null;
        PlugCheaper(ways, [], ref best);
        return best;
    }

    /// <summary>Batteries, splitters and other adapter leads of a hook-up: a splitter for each further device on an outlet, a join lead for each further outlet of a feed.</summary>
    public static (int Batteries, int Splitters, int Others) LeadsOf(IReadOnlyCollection<Feed> feeds)
    {
        var plugged = feeds.Where(f => !f.OnBattery).ToList();
        return (
            feeds.Count - plugged.Count,
            plugged.SelectMany(f => f.Outlets).Count() - plugged.SelectMany(f => f.Outlets).Distinct().Count(),
            plugged.Sum(f => (f.Reversed ? 1 : 0) + f.Outlets.Count - 1));
    }

    private void PlugCheaper(List<List<Feed>> ways, List<Feed> found, ref (int, int, int)? best)
    {
        var leads = LeadsOf(found);
        if (best is { } known && leads.CompareTo(known) >= 0)
            return;
        if (found.Count == ways.Count)
        {
            best = leads;
            return;
        }

        foreach (var way in ways[found.Count])
        {
            found.Add(way);
            if (judge.Allows(found))
                PlugCheaper(ways, found, ref best);
            found.RemoveAt(found.Count - 1);
        }
    }

    private bool Plug(List<List<Feed>> ways, List<Feed> found)
    {
        if (found.Count == ways.Count)
            return true;
        foreach (var way in ways[found.Count])
        {
            found.Add(way);
            if (judge.Allows(found) && Plug(ways, found))
                return true;
            found.RemoveAt(found.Count - 1);
        }

        return false;
    }

    private IEnumerable<Feed> WaysFor(GearId device)
    {
        for (var set = 1; set < 1 << Outlets.Count; set++)
        {
            var outlets = Outlets.Where((_, i) => (set >> i & 1) == 1).ToList();
            OutletJoin[] joins = outlets.Count == 1 ? [OutletJoin.Single] : [OutletJoin.Parallel, OutletJoin.Series];
            foreach (var join in joins)
                foreach (var settings in Settings(outlets))
                    foreach (var reversed in new[] { false, true })
                        yield return Fed(device, outlets, join, settings, reversed);
        }

        yield return Feed.FromBattery(device);
    }

    private static Feed Fed(GearId device, List<Outlet> outlets, OutletJoin join, ValueList<Millivolts> settings, bool reversed)
    {
        var feed = new Feed(device, outlets.Select(o => o.Id).ToValueList(), join, Millivolts.Zero, settings, reversed);
        return feed with { Volts = feed.Arriving };
    }

    private static IEnumerable<ValueList<Millivolts>> Settings(IReadOnlyList<Outlet> outlets) => outlets
        .Aggregate<Outlet, IEnumerable<Millivolts[]>>([[]], (sofar, outlet) => sofar.SelectMany(_ => outlet.Volts, (settings, volts) => (Millivolts[])[.. settings, volts]))
        .Select(settings => settings.ToValueList());
}
