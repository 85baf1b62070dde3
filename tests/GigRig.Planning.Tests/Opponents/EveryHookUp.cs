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
