namespace GigRig.Planning.Arranging;

/// <summary>How many leads pass between sets of things; sums over a set are looked up by its two halves.</summary>
internal sealed class RowFlows
{
    private const int Half = 10;
    private const int LowBits = (1 << Half) - 1;

    private readonly Sums[] outs;
    private readonly Sums[] ins;
    private readonly int[] across;

    public RowFlows(int count, IReadOnlyList<RowLink> links)
    {
        outs = [.. Enumerable.Range(0, count).Select(i => new Sums(count, links.Where(l => l.From == i).Select(l => (l.To, l.Times))))];
        ins = [.. Enumerable.Range(0, count).Select(i => new Sums(count, links.Where(l => l.To == i).Select(l => (l.From, l.Times))))];
        across = new int[1 << count];
        for (var set = 1; set < across.Length; set++)
        {
            var one = System.Numerics.BitOperations.TrailingZeroCount(set);
            var rest = set & (set - 1);
            across[set] = across[rest] + outs[one].All + ins[one].All - (2 * (outs[one].Over(rest) + ins[one].Over(rest)));
        }
    }

    /// <summary>Leads between the set and everything else.</summary>
    public int Across(int set) => across[set];

    /// <summary>What the ends of a thing's leads add, counted from its left end, where exactly this set stands left of it.</summary>
    public long EndsOf(int thing, RowWay way, int left) =>
        ((long)way.Out * ((2 * outs[thing].Over(left)) - outs[thing].All)) + ((long)way.In * ((2 * ins[thing].Over(left)) - ins[thing].All));

    private sealed class Sums
    {
        private readonly int[] low = new int[1 << Half];
        private readonly int[] high = new int[1 << Half];

        public Sums(int count, IEnumerable<(int Other, int Times)> leads)
        {
            var each = new int[2 * Half];
            foreach (var (other, times) in leads)
                each[other] += times;
            All = each.Sum();
            for (var set = 1; set <= LowBits; set++)
            {
                var one = System.Numerics.BitOperations.TrailingZeroCount(set);
                low[set] = low[set & (set - 1)] + each[one];
                high[set] = high[set & (set - 1)] + each[Half + one];
            }
        }

        public int All { get; }

        public int Over(int set) => low[set & LowBits] + high[set >> Half];
    }
}
