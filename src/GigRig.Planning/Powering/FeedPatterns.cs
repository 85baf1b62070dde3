using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Powering;

/// <summary>Lists every sensible way to feed a device: one outlet, isolated outlets in parallel, two isolated outlets in series.</summary>
internal sealed class FeedPatterns(OutletClass[] classes, PowerAdapters adapters)
{
    /// <summary>How many sets of outlets are looked at for one device at one voltage. Supplies on sale stay far below; sets of fewer outlets come first.</summary>
    private const int MostSets = 4000;

    /// <summary>Whether every way was listed so far. Where it was not, what cannot be fed is not proved to be so.</summary>
    public bool IsComplete { get; private set; } = true;

    /// <summary>Whether a device may share one outlet of the class with others, apart from its current.</summary>
    public static bool MayShare(PowerNeed need, OutletClass outlet, int volts) =>
        need.Type == CurrentType.Dc
        && outlet.Type == CurrentType.Dc
        && need.Polarity == Polarity.Negative
        && outlet.Polarity == Polarity.Negative
        && InRange(need, volts);

    public FeedPattern[] For(PowerNeed need, int draw) => [.. Singles(need, draw), .. Parallels(need, draw), .. Series(need, draw)];

    private static bool InRange(PowerNeed need, int volts) => need.Min.Value <= volts && volts <= need.Max.Value;

    private IEnumerable<FeedPattern> Singles(PowerNeed need, int draw)
    {
        for (var c = 0; c < classes.Length; c++)
        {
            var outlet = classes[c];
            if (outlet.Type != need.Type || outlet.Current < draw)
                continue;
            var reversed = need.Type == CurrentType.Dc && outlet.Polarity != need.Polarity;
            var alone = need.Type == CurrentType.Dc && (reversed || need.Polarity == Polarity.Positive);
            if ((reversed && adapters.Reverse == 0) || (alone && !outlet.Isolated))
                continue;
            foreach (var volts in outlet.Volts.Where(v => InRange(need, v)))
                yield return new([c], [volts], OutletJoin.Single, reversed);
        }
    }

    private IEnumerable<FeedPattern> Parallels(PowerNeed need, int draw)
    {
        if (need.Type != CurrentType.Dc || adapters.Parallel == 0)
            yield break;
        foreach (var polarity in new[] { Polarity.Negative, Polarity.Positive })
        {
            if (polarity != need.Polarity && adapters.Reverse == 0)
                continue;
            var joinable = Joinable(polarity);
            foreach (var volts in joinable.SelectMany(c => classes[c].Volts).Distinct().Where(v => InRange(need, v)).Order())
            {
                var able = joinable.Where(c => classes[c].Volts.Contains(volts)).ToArray();
                foreach (var set in Multisets(able, adapters.Parallel + 1, draw).Where(s => s.Length >= 2 && JustEnough(s, draw)))
                    yield return new(set, [.. set.Select(_ => volts)], OutletJoin.Parallel, polarity != need.Polarity);
            }
        }
    }

    private IEnumerable<FeedPattern> Series(PowerNeed need, int draw)
    {
        if (need.Type != CurrentType.Dc || adapters.Series == 0)
            yield break;
        foreach (var polarity in new[] { Polarity.Negative, Polarity.Positive })
        {
            if (polarity != need.Polarity && adapters.Reverse == 0)
                continue;
            foreach (var set in Multisets(Joinable(polarity), 2).Where(s => s.Length == 2 && s.All(c => classes[c].Current >= draw)))
            {
                var settings = classes[set[0]].Volts.SelectMany(_ => classes[set[1]].Volts, (a, b) => (a, b)).Where(p => InRange(need, p.a + p.b));
                foreach (var (a, b) in settings)
                    yield return new(set, [a, b], OutletJoin.Series, polarity != need.Polarity);
            }
        }
    }

    private int[] Joinable(Polarity polarity) =>
        [.. Enumerable.Range(0, classes.Length).Where(c => classes[c].Isolated && classes[c].Type == CurrentType.Dc && classes[c].Polarity == polarity)];

    /// <summary>Enough together, and not without any one of them.</summary>
    private bool JustEnough(int[] set, int draw)
    {
        var sum = set.Sum(c => classes[c].Current);
        return sum >= draw && sum - set.Min(c => classes[c].Current) < draw;
    }

    /// <summary>Sets of outlets that give less than <paramref name="enough"/>, and those that one more outlet takes there: a larger one has an outlet to spare.</summary>
    private IEnumerable<int[]> Multisets(int[] able, int most, int enough = int.MaxValue)
    {
        var sets = new Queue<int[]>([[]]);
        for (var seen = 0; sets.TryDequeue(out var set); seen++)
        {
            if (seen > MostSets)
            {
                IsComplete = false;
                yield break;
            }

            if (set.Length > 0)
                yield return set;
            if (set.Length == most || set.Sum(c => classes[c].Current) >= enough)
                continue;
            foreach (var next in able.Where(c => (set.Length == 0 || c >= set[^1]) && set.Count(s => s == c) < classes[c].Count))
                sets.Enqueue([.. set, next]);
        }
    }
}
