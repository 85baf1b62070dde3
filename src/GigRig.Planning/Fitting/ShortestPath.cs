namespace GigRig.Planning.Fitting;

/// <summary>The shortest path that visits every node once, by the nodes already visited and the last of them (Held and Karp 1962).</summary>
internal static class ShortestPath
{
    /// <param name="lengths">From each node to each other, up to a dozen nodes.</param>
    public static int Through(int[][] lengths)
    {
        var count = lengths.Length;
        var all = (1 << count) - 1;
        var least = new int[(all + 1) * count];
        Array.Fill(least, int.MaxValue);
        for (var i = 0; i < count; i++)
            least[((1 << i) * count) + i] = 0;
        for (var set = 1; set < all; set++)
        {
            for (var last = 0; last < count; last++)
            {
                var sofar = least[(set * count) + last];
                if (sofar == int.MaxValue)
                    continue;
                for (var next = 0; next < count; next++)
                {
                    if ((set >> next & 1) == 1)
                        continue;
                    ref var known = ref least[((set | 1 << next) * count) + next];
                    known = Math.Min(known, sofar + lengths[last][next]);
                }
            }
        }

        var best = int.MaxValue;
        foreach (var length in least.AsSpan(all * count, count))
            best = Math.Min(best, length);
        return best;
    }
}
