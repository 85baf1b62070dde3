namespace GigRig.Planning.Powering;

/// <summary>
/// Sets of consumers that were proved not to be fed together, by supply with its outlets, settings and adapter leads. Others fail likewise where they can be matched
/// one to one with at least as hungry ones of theirs. The oldest are forgotten. Safe from many threads.
/// </summary>
internal sealed class StarvedSets
{
    internal const int MostSupplies = 32;
    internal const int MostASupply = 256;

    private readonly Lock gate = new();
    private readonly Dictionary<string, LinkedList<Kind[]>> bySupply = new(StringComparer.Ordinal);
    private readonly Queue<string> supplies = new();

    public int Count
    {
        get
        {
            lock (gate)
                return bySupply.Values.Sum(sets => sets.Count);
        }
    }

    public void Add(string supply, IEnumerable<Consumer> starved)
    {
        Kind[] kinds = [.. starved.GroupBy(c => c.Key, c => c.Draw).Select(g => new Kind(g.Key, [.. g.OrderDescending()]))];
        lock (gate)
        {
            if (!bySupply.TryGetValue(supply, out var sets))
            {
                bySupply[supply] = sets = [];
                supplies.Enqueue(supply);
                if (supplies.Count > MostSupplies)
                    bySupply.Remove(supplies.Dequeue());
            }

            sets.AddFirst(kinds);
            if (sets.Count > MostASupply)
                sets.RemoveLast();
        }
    }

    /// <summary>Those of the consumers, by their positions, that cannot be fed together for a known reason; null where none is known.</summary>
    public IReadOnlyList<int>? Among(string supply, IReadOnlyList<Consumer> consumers)
    {
        Kind[][] known;
        lock (gate)
        {
            if (!bySupply.TryGetValue(supply, out var sets))
                return null;
            known = [.. sets];
        }

        var hungriest = Enumerable.Range(0, consumers.Count).GroupBy(i => consumers[i].Key)
            .ToDictionary(g => g.Key, g => g.OrderByDescending(i => consumers[i].Draw).ToArray(), StringComparer.Ordinal);
        var failing = Array.Find(known, set => set.All(kind => hungriest.TryGetValue(kind.Key, out var like) && IsMatched(kind.Draws, like)));
        return failing?.SelectMany(kind => hungriest[kind.Key].Take(kind.Draws.Length)).Order().ToArray();

        bool IsMatched(int[] draws, int[] like)
        {
            for (var i = 0; i < draws.Length; i++)
            {
                if (i == like.Length || consumers[like[i]].Draw < draws[i])
                    return false;
            }

            return true;
        }
    }

    /// <summary>Consumers fed by the same outlets alike, the hungriest first.</summary>
    private sealed record Kind(string Key, int[] Draws);
}
