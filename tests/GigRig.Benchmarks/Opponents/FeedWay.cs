using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Benchmarks.Opponents;

/// <summary>Outlets that are alike in everything, taken together.</summary>
internal sealed record OutletKind(Outlet Like, bool Isolated, string[] Ids)
{
    public static OutletKind[] Of(Supply? supply) => supply is null
        ? []
        : [.. supply.Outlets.GroupBy(o => (o.Volts, o.Current, o.Type, o.Polarity, Isolated: supply.IsIsolated(o))).Select(g => new OutletKind(g.First(), g.Key.Isolated, [.. g.Select(o => o.Id)]))];
}

/// <summary>One way to feed a device, by kinds of outlets.</summary>
/// <param name="Kinds">Positions of the kinds used, one for each outlet.</param>
internal sealed record FeedWay(int[] Kinds, Millivolts[] Settings, OutletJoin Join, bool Reversed)
{
    public int ParallelLeads => Join == OutletJoin.Parallel ? Kinds.Length - 1 : 0;

    public string Key => $"{Join} {string.Join(',', Kinds)} {string.Join(',', Settings)} {Reversed}";

    public int UsesOf(int kind) => Kinds.Count(k => k == kind);

    /// <summary>All of them but those that another one beats with a part of the same outlets.</summary>
    public static IEnumerable<FeedWay> For(PowerNeed need, int draw, OutletKind[] kinds, PowerAdapters adapters)
    {
        var most = Math.Max(1, Math.Max(adapters.Parallel > 0 ? adapters.Parallel + 1 : 0, adapters.Series > 0 ? 2 : 0));
        return Sets([], kinds, need.Type == CurrentType.Dc ? most : 1).SelectMany(set => Ways(need, draw, kinds, adapters, set));
    }

    private static IEnumerable<FeedWay> Ways(PowerNeed need, int draw, OutletKind[] kinds, PowerAdapters adapters, int[] set)
    {
        var outlets = set.Select(k => kinds[k].Like).ToArray();
        var mismatch = need.Type == CurrentType.Dc && outlets[0].Polarity != need.Polarity;
        var mustBeAlone = set.Length > 1 || mismatch || (need.Type == CurrentType.Dc && need.Polarity == Polarity.Positive);
        if (outlets.Any(o => o.Type != need.Type || o.Polarity != outlets[0].Polarity) || (mismatch && adapters.Reverse == 0) || (mustBeAlone && set.Any(k => !kinds[k].Isolated)))
            yield break;
        var currents = outlets.Select(o => o.Current.Value).ToArray();
        var same = outlets[0].Volts.Where(v => need.Min <= v && v <= need.Max && outlets.All(o => o.Volts.Contains(v))).Take(1);
        if (set.Length == 1 && currents[0] >= draw)
        {
            foreach (var volts in same)
                yield return new(set, [volts], OutletJoin.Single, mismatch);
        }

        if (set.Length > 1 && set.Length <= adapters.Parallel + 1 && currents.Sum() >= draw && currents.Sum() - currents.Min() < draw)
        {
            foreach (var volts in same)
                yield return new(set, [.. set.Select(_ => volts)], OutletJoin.Parallel, mismatch);
        }

        if (set.Length == 2 && adapters.Series > 0 && currents.Min() >= draw)
        {
            var sums = from a in outlets[0].Volts from b in outlets[1].Volts where need.Min <= a + b && a + b <= need.Max select new[] { a, b };
            foreach (var settings in sums.Take(1))
                yield return new(set, settings, OutletJoin.Series, mismatch);
        }
    }

    /// <summary>Every choice of one to <paramref name="most"/> outlets, alike ones not told apart.</summary>
    private static IEnumerable<int[]> Sets(int[] begun, OutletKind[] kinds, int most)
    {
        for (var k = begun.Length == 0 ? 0 : begun[^1]; k < kinds.Length; k++)
        {
            if (begun.Count(b => b == k) == kinds[k].Ids.Length)
                continue;
            int[] set = [.. begun, k];
            yield return set;
            if (set.Length < most)
            {
                foreach (var more in Sets(set, kinds, most))
                    yield return more;
            }
        }
    }
}
