namespace GigRig.Planning.Fitting;

/// <summary>
/// The board seen along its width only, as a schedule: what cannot lie behind another keeps its distance, plugs and all, and what lies behind one another is no
/// deeper than the board. Bodies are put down from left to right, each as far left as it goes (active schedules, Giffler and Thompson 1960), and no state is
/// followed that another with the same things put down makes needless. A no is a proof; a yes says where along the width they may stand, not yet how far back.
/// </summary>
internal sealed class StripSearch
{
    public const int MostThings = 24;
    private const int MostRow = 12;
    private const int MostShallow = 4;
    private const int MostKept = 48;

    private readonly Surface surface;
    private readonly Stance[] things;
    private readonly int mostNodes;
    private readonly Clock clock;
    private readonly Func<int[], bool> accept;
    private readonly int[] left;
    private readonly int[] right;
    private readonly int[,] distance;
    private readonly List<RowRest> rests = [];
    private readonly Dictionary<int, List<StripState>> seen = [];
    private readonly List<(int Thing, int X)> put = [];
    private readonly StripArea area;
    private int nodes;
    private int refused;

    private StripSearch(Surface surface, Stance[] things, Following following, int mostNodes, Clock clock, Func<int[], bool> accept)
    {
        (this.surface, this.things, this.mostNodes, this.clock, this.accept) = (surface, things, mostNodes, clock, accept);
        area = new(surface, things);
        left = new int[things.Length];
        right = new int[things.Length];
        distance = new int[things.Length, things.Length];
        for (var i = 0; i < things.Length; i++)
        {
            (left[i], right[i], _, _) = Stance.Reach(things[i].Pose, surface);
            for (var j = 0; j < things.Length; j++)
                distance[i, j] = i == j ? 0 : following.Least(things[i], things[j]);
        }

    }

    internal enum Word
    {
        No,
        Yes,
        Open,
    }

    /// <param name="things">Turned as they are to stand. Those that are the same object stand in each other's place.</param>
    /// <param name="accept">Asked of each solution found: where along the width each thing may stand.</param>
    public static Word Decide(Surface surface, Stance[] things, Following following, int mostNodes, Clock clock, Func<int[], bool> accept, out int nodes)
    {
        nodes = 0;
        if (things.Length > MostThings)
            return Word.Open;
        if (IsTooMuch(surface, things))
            return Word.No;
        var search = new StripSearch(surface, things, following, mostNodes, clock, accept);
        if (!search.Begins())
            return Word.No;
        var found = search.Next(0, 0);
        nodes = search.nodes;
        return found ? Word.Yes : search.IsGivenUp || search.refused > 0 ? Word.Open : Word.No;
    }

    private bool IsGivenUp => nodes > mostNodes || clock.IsUp;

    /// <summary>Deep bodies wider than the board together, or more body than board: no need to look further.</summary>
    private static bool IsTooMuch(Surface surface, Stance[] things)
    {
        var (row, area) = (0, 0L);
        foreach (var thing in things)
        {
            row += 2 * thing.Pose.Depth > surface.Depth ? thing.Pose.Width : 0;
            area += (long)thing.Pose.Width * thing.Pose.Depth;
        }

        return row > surface.Width || area > (long)surface.Width * surface.Depth;
    }

    /// <summary>Works out the rests one after another, the cheaper first; false where one refutes at once.</summary>
    private bool Begins()
    {
        var starts = new int[things.Length];
        if (!FindStarts(0, 0, new int[things.Length], starts))
            return false;
        int[] widths = [.. things.Select(t => t.Pose.Width)];
        int[] deep = [.. Enumerable.Range(0, things.Length).Where(i => 2 * things[i].Pose.Depth > surface.Depth).Take(MostRow)];
        if (!Add(deep))
            return false;
        int[] shallow = [.. Enumerable.Range(0, things.Length).Where(i => 2 * things[i].Pose.Depth <= surface.Depth)];
        return deep.Length >= MostRow - 1 || shallow.Length > MostShallow || shallow.All(s => Add([.. deep, s]));

        bool Add(int[] row)
        {
            if (RowRest.NoOrderGoes(row, distance, widths, starts, surface.Width))
                return false;
            if (RowRest.AnyOrderGoes(row, distance, widths, starts, surface.Width))
                return true;
            rests.Add(new RowRest(row, distance, widths));
            return rests[^1].Suffices(0, starts, surface.Width);
        }
    }

    private bool Next(int set, int from)
    {
        if (set == (1 << things.Length) - 1)
            return Finish();
        nodes++;
        if (IsGivenUp)
            return false;
        var reach = new int[things.Length];
        var starts = new int[things.Length];
        if (!area.Suffices(set, from, put) || !FindStarts(set, from, reach, starts) || !rests.All(r => r.Suffices(set, starts, surface.Width)) || IsNeedless(set, from, reach))
            return false;
        foreach (var thing in Enumerable.Range(0, things.Length).Where(i => (set >> i & 1) == 0).OrderBy(i => starts[i]).ThenByDescending(i => things[i].Pose.Depth).ThenByDescending(i => things[i].Pose.Width))
        {
            if (IsBeforeItsLike(set, thing))
                continue;
            put.Add((thing, starts[thing]));
            if (Next(set | 1 << thing, starts[thing]))
                return true;
            put.RemoveAt(put.Count - 1);
            if (IsGivenUp)
                return false;
        }

        return false;
    }

    /// <summary>Things alike are put down in their order.</summary>
    private bool IsBeforeItsLike(int set, int thing)
    {
        for (var i = 0; i < thing; i++)
        {
            if (ReferenceEquals(things[i], things[thing]) && (set >> i & 1) == 0)
                return true;
        }

        return false;
    }

    private bool Finish()
    {
        var along = new int[things.Length];
        foreach (var (thing, x) in put)
            along[thing] = x;
        if (accept(along))
            return true;

        // Only these places along the width failed: with others, passed over on the way, it may do after all.
        refused++;
        return false;
    }

    /// <summary>The least place of everything still open: by distances alone, and with room for its depth. False where something has none.</summary>
    private bool FindStarts(int set, int from, int[] reach, int[] starts)
    {
        for (var thing = 0; thing < things.Length; thing++)
        {
            if ((set >> thing & 1) == 1)
                continue;
            var x = Math.Max(from, left[thing]);
            foreach (var (other, at) in put)
                x = Math.Max(x, at + distance[other, thing]);
            reach[thing] = x;
            starts[thing] = FirstWithRoom(thing, x);
            if (starts[thing] > right[thing])
                return false;
        }

        return true;
    }

    /// <summary>Whatever is put down starts no later than this, so that room only grows to the right.</summary>
    private int FirstWithRoom(int thing, int x)
    {
        while (true)
        {
            var depth = things[thing].Pose.Depth;
            var next = int.MaxValue;
            foreach (var (other, at) in put)
            {
                if (at + things[other].Pose.Width <= x)
                    continue;
                depth += things[other].Pose.Depth;
                next = Math.Min(next, at + things[other].Pose.Width);
            }

            if (depth <= surface.Depth)
                return x;
            x = next;
        }
    }

    /// <summary>Whether a state known leaves every open thing at least as much room everywhere.</summary>
    private bool IsNeedless(int set, int from, int[] reach)
    {
        var ends = new List<(int End, int Depth)>();
        foreach (var (thing, at) in put)
        {
            if (at + things[thing].Pose.Width > from)
                ends.Add((at + things[thing].Pose.Width, things[thing].Pose.Depth));
        }

        var state = new StripState(from, reach, [.. ends]);
        if (!seen.TryGetValue(set, out var known))
            seen[set] = known = [];
        foreach (var other in known)
        {
            if (other.IsNoWorseThan(state))
                return true;
        }

        if (known.Count < MostKept)
            known.Add(state);
        return false;
    }
}
