namespace GigRig.Planning.Arranging;

/// <summary>One way a thing may take its place in a row: how wide it is, and where along it leads leave and arrive, from its left end.</summary>
internal readonly record struct RowWay(int Width, int Out, int In);

/// <summary>Several leads from one thing's output to another's input.</summary>
internal readonly record struct RowLink(int From, int To, int Times = 1);

/// <summary>
/// The single-row layout question, to the end: in which order, and which way round, do things stand in one row so that the leads along it are shortest? Left to
/// right by the set that stands already (Picard and Queyranne 1981, after Held and Karp 1962): a stretch of the row costs its length times the leads that pass it.
/// </summary>
internal static class RowOrder
{
    /// <summary>Steps looked at before the question is called too large.</summary>
    private const long MostSteps = 40_000_000;

    private const int MostThings = 20;

    /// <param name="gap">Least distance between one thing, in one of its ways, and the next; null where things may always touch.</param>
    /// <returns>Things with their ways from left to right, and the length of all leads; null where there are too many, or time ran out.</returns>
    public static ((int Thing, int Way)[] Order, long Length)? Best(RowWay[][] things, IReadOnlyList<RowLink> links, Func<int, int, int, int, int>? gap, Clock clock)
    {
        var count = things.Length;
        var ways = things.SelectMany((all, thing) => all.Select((way, index) => (Thing: thing, Index: index, Way: way))).ToArray();
        var lasts = gap is null ? 1 : ways.Length;
        if (count == 0 || count > MostThings || ways.Length > byte.MaxValue || ((long)lasts * ways.Length) << count > MostSteps)
            return null;
        var flows = new RowFlows(count, links);
        var gaps = gap is null ? null : ways.Select(a => ways.Select(b => a.Thing == b.Thing ? 0 : gap(a.Thing, a.Index, b.Thing, b.Index)).ToArray()).ToArray();
        var all = (1 << count) - 1;
        var least = new long[(all + 1) * lasts];
        var from = new byte[least.Length];
        var by = new byte[least.Length];
        Array.Fill(least, long.MaxValue);
        least[0] = 0;
        for (var set = 0; set < all; set++)
        {
            if ((set & 1023) == 0 && clock.IsUp)
                return null;
            for (var next = 0; next < ways.Length; next++)
            {
                var (thing, _, way) = ways[next];
                if ((set >> thing & 1) == 1)
                    continue;
                var grown = set | 1 << thing;
                var step = flows.EndsOf(thing, way, set) + (way.Width * flows.Across(grown));
                for (var last = 0; last < lasts; last++)
                {
                    var sofar = least[(set * lasts) + last];
                    if (sofar == long.MaxValue)
                        continue;
                    var cost = sofar + step + (gaps is null || set == 0 ? 0 : gaps[last][next] * flows.Across(set));
                    var state = (grown * lasts) + (gaps is null ? 0 : next);
                    if (cost >= least[state])
                        continue;
                    (least[state], from[state], by[state]) = (cost, (byte)last, (byte)next);
                }
            }
        }

        var end = Enumerable.Range(0, lasts).MinBy(last => least[(all * lasts) + last]);
        var order = new (int Thing, int Way)[count];
        for (var (set, place) = (all, count - 1); place >= 0; place--)
        {
            var state = (set * lasts) + end;
            var (thing, index, _) = ways[by[state]];
            order[place] = (thing, index);
            end = from[state];
            set &= ~(1 << thing);
        }

        return (order, least.Skip(all * lasts).Min());
    }
}
