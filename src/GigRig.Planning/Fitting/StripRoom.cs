namespace GigRig.Planning.Fitting;

/// <summary>How much depth is free along a strip filled from left to right: it never grows less, and grows where something ends.</summary>
internal sealed class StripRoom
{
    private readonly int depth;
    private readonly StripThings things;
    private readonly Sums sums;
    private readonly int[] from;
    private readonly int[] free;
    private int steps;

    public StripRoom(int depth, StripThings things)
    {
        (this.depth, this.things) = (depth, things);
        sums = new(depth);
        from = new int[things.Count + 1];
        free = new int[things.Count + 1];
    }

    /// <summary>Looks at a strip on which these stand, each starting no later than <paramref name="start"/>.</summary>
    public void Look(int start, List<(int Thing, int X)> put)
    {
        (steps, from[0], free[0]) = (1, start, depth);
        foreach (var (thing, x) in put)
        {
            var end = x + things.Widths[thing];
            if (end <= start)
                continue;
            free[0] -= things.Depths[thing];
            var at = steps++;
            for (; from[at - 1] > end; at--)
                (from[at], free[at]) = (from[at - 1], free[at - 1]);
            (from[at], free[at]) = (end, things.Depths[thing]);
        }

        // What ends at each step was noted there; now it is added up.
        for (var s = 1; s < steps; s++)
            free[s] += free[s - 1];
    }

    /// <summary>The first place from here on where so much depth is free, and free it stays.</summary>
    public int First(int thing, int x)
    {
        for (var s = 0; ; s++)
        {
            if (free[s] >= things.Depths[thing])
                return Math.Max(x, from[s]);
        }
    }

    /// <summary>
    /// Whether the bodies still open have no more area than can be filled from here on: of the depth that is free above a point, only sums of their depths (Herz 1972; Christofides
    /// and Whitlock 1977).
    /// </summary>
    /// <param name="start">Nothing starts before.</param>
    public bool Suffices(int set, int start)
    {
        var area = 0L;
        sums.Clear();
        for (var thing = 0; thing < things.Count; thing++)
        {
            if ((set >> thing & 1) == 1)
                continue;
            area += (long)things.Widths[thing] * things.Depths[thing];
            sums.Add(things.Depths[thing]);
        }

        for (var s = 0; s < steps && area > 0; s++)
        {
            var length = (s + 1 < steps ? from[s + 1] : things.Width) - Math.Max(start, from[s]);
            if (length > 0)
                area -= (long)length * sums.UpTo(free[s]);
        }

        return area <= 0;
    }

    /// <summary>What is free from here on.</summary>
    public (int From, int Free)[] Since(int start)
    {
        var first = 0;
        while (first + 1 < steps && from[first + 1] <= start)
            first++;
        var since = new (int, int)[steps - first];
        for (var s = first; s < steps; s++)
            since[s - first] = (Math.Max(start, from[s]), free[s]);
        return since;
    }

    /// <summary>Whether from here on as much depth is free on the other strip as on this one.</summary>
    public bool IsNoMoreThan((int From, int Free)[] other, int start)
    {
        var o = 0;
        for (var s = 0; s < steps; s++)
        {
            if (s + 1 < steps && from[s + 1] <= start)
                continue;
            var x = Math.Max(start, from[s]);
            while (o + 1 < other.Length && other[o + 1].From <= x)
                o++;
            if (other[o].From > x || other[o].Free < free[s])
                return false;
        }

        return true;
    }
}
