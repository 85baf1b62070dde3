using GigRig.Planning.Powering;

namespace GigRig.Planning.Choosing;

/// <summary>
/// For each group of outlet classes that some devices depend on: what they take of it at least is no more than there is (Hall 1935). A device that shares an outlet
/// takes a splitter instead.
/// </summary>
internal static class OutletBounds
{
    private const int MostGroups = 128;

    public static IEnumerable<Bound> Of(Question question)
    {
        var classes = question.Outlets;
        if (classes.Length == 0)
            yield break;
        var consumers = question.Candidates.Select(c => c.Consumer is { Need.Battery: false } needy ? needy : null).ToArray();
        var splitters = question.Problem.Adapters.Splitter;
        foreach (var group in Groups(consumers.OfType<Consumer>().DistinctBy(c => c.Key)))
        {
            var weights = consumers.Select(c => c is null ? 0L : Least(c, group)).ToArray();
            yield return new(weights, splitters + group.Sum(c => classes[c].Count));
        }

        if (question.Problem.Supply?.TotalCurrent is { } total)
            yield return new([.. consumers.Select(c => (long)(c?.Draw ?? 0))], total.Value);

        long Least(Consumer consumer, HashSet<int> group)
        {
            var least = consumer.Patterns.Min(p => p.Classes.Count(group.Contains));
            if (splitters == 0)
                return least;
            for (var c = 0; c < classes.Length; c++)
            {
                if (classes[c].Volts.Any(v => FeedPatterns.MayShare(consumer.Need, classes[c], v)))
                    least = Math.Min(least, group.Contains(c) ? 1 : 0);
            }

            return least;
        }
    }

    /// <summary>Everything first, then what kinds of consumers can use, and unions of these.</summary>
    private static IEnumerable<HashSet<int>> Groups(IEnumerable<Consumer> kinds)
    {
        var uses = kinds.Select(k => k.Patterns.SelectMany(p => p.Classes).ToHashSet()).DistinctBy(KeyOf).ToArray();
        var found = new Dictionary<string, HashSet<int>>(StringComparer.Ordinal);
        Add(uses.SelectMany(u => u).ToHashSet());
        foreach (var use in uses)
        {
            foreach (var other in found.Values.ToArray())
                Add([.. other, .. use]);
            Add(use);
        }

        return found.Values;

        void Add(HashSet<int> group)
        {
            if (found.Count < MostGroups)
                found.TryAdd(KeyOf(group), group);
        }

        static string KeyOf(HashSet<int> group) => string.Join(',', group.Order());
    }
}
