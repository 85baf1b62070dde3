namespace GigRig.Planning.Fitting;

/// <summary>
/// The board seen along its width only, as a schedule: what cannot lie behind another keeps its distance, plugs and all, and what lies behind one another is no
/// deeper than the board. Bodies are put down from left to right, each as far left as it goes (active schedules, Giffler and Thompson 1960), and no state is
/// followed that another with the same things put down makes needless. A no is a proof; a yes says where along the width they may stand, not yet how far back.
/// </summary>
internal sealed class StripSearch
{
    public const int MostThings = 24;
    private const int MostKept = 48;

    /// <summary>How many nodes pass before the clock is looked at again.</summary>
    private const int NodesALook = 64;

    private readonly StripThings things;
    private readonly int mostNodes;
    private readonly int mostRefused;
    private readonly Clock clock;
    private readonly Func<int[], bool> accept;
    private readonly StripRoom room;
    private readonly StripRests rests;
    private readonly (int[] Reach, int[] Starts, int[] Order)[] levels;
    private readonly Dictionary<int, List<StripState>> seen = [];
    private readonly List<(int Thing, int X)> put = [];
    private int nodes;
    private int refused;
    private bool isGivenUp;

    private StripSearch(Surface surface, StripThings things, int mostNodes, int mostRefused, Clock clock, Func<int[], bool> accept)
    {
        (this.things, this.mostNodes, this.mostRefused, this.clock, this.accept) = (things, mostNodes, mostRefused, clock, accept);
        room = new(surface.Depth, things);
        rests = new(things, surface.Depth);
        levels = [.. things.Widths.Select(_ => (new int[things.Count], new int[things.Count], new int[things.Count]))];
    }

    internal enum Word
    {
        No,
        Yes,
        Open,
    }

    /// <param name="stances">Turned as they are to stand. Those that are the same object stand in each other's place.</param>
    /// <param name="accept">Asked of each solution found: where along the width each thing may stand.</param>
    /// <param name="mostRefused">After so many solutions that were not accepted the question is left open.</param>
    public static Word Decide(Surface surface, Stance[] stances, Following following, int mostNodes, Clock clock, Func<int[], bool> accept, out int nodes, int mostRefused = int.MaxValue)
    {
        nodes = 0;
        if (stances.Length > MostThings)
            return Word.Open;
        if (IsTooMuch(surface, stances))
            return Word.No;
        var search = new StripSearch(surface, new(surface, stances, following), mostNodes, mostRefused, clock, accept);
        if (!search.Begins())
            return Word.No;
        var found = search.Next(0, 0);
        nodes = search.nodes;
        return found ? Word.Yes : search.isGivenUp || search.refused > 0 ? Word.Open : Word.No;
    }

    /// <summary>Deep bodies wider than the board together, or more body than board: no need to look further.</summary>
    private static bool IsTooMuch(Surface surface, Stance[] stances)
    {
        var (row, area) = (0, 0L);
        foreach (var stance in stances)
        {
            row += 2 * stance.Pose.Depth > surface.Depth ? stance.Pose.Width : 0;
            area += (long)stance.Pose.Width * stance.Pose.Depth;
        }

        return row > surface.Width || area > (long)surface.Width * surface.Depth;
    }

    private bool Begins()
    {
        var starts = new int[things.Count];
        room.Look(0, put);
        return FindStarts(0, 0, new int[things.Count], starts) && rests.Begin(starts);
    }

    private bool Next(int set, int from)
    {
        if (set == (1 << things.Count) - 1)
            return Finish();
        nodes++;
        if (nodes > mostNodes || (nodes % NodesALook == 0 && clock.IsUp))
        {
            isGivenUp = true;
            return false;
        }

        var (reach, starts, order) = levels[put.Count];
        room.Look(from, put);
        if (!FindStarts(set, from, reach, starts))
            return false;
        var open = Sort(set, starts, order);
        if (!room.Suffices(set, starts[order[0]]) || !rests.Suffice(set, starts) || IsNeedless(set, starts[order[0]], reach))
            return false;
        for (var i = 0; i < open; i++)
        {
            var thing = order[i];

            // Things alike are put down in their order.
            if (things.LikeBefore[thing] is >= 0 and var like && (set >> like & 1) == 0)
                continue;
            put.Add((thing, starts[thing]));
            if (Next(set | 1 << thing, starts[thing]))
                return true;
            put.RemoveAt(put.Count - 1);
            if (isGivenUp)
                return false;
        }

        return false;
    }

    private bool Finish()
    {
        var along = new int[things.Count];
        foreach (var (thing, x) in put)
            along[thing] = x;
        if (accept(along))
            return true;

        // Only these places along the width failed: with others, passed over on the way, it may do after all.
        isGivenUp |= ++refused > mostRefused;
        return false;
    }

    /// <summary>The least place of everything still open: by distances alone, and with room for its depth. False where something has none.</summary>
    private bool FindStarts(int set, int from, int[] reach, int[] starts)
    {
        for (var thing = 0; thing < things.Count; thing++)
        {
            if ((set >> thing & 1) == 1)
                continue;
            var x = Math.Max(from, things.Left[thing]);
            foreach (var (other, at) in put)
                x = Math.Max(x, at + things.Distance[other, thing]);
            reach[thing] = x;
            starts[thing] = room.First(thing, x);
            if (starts[thing] > things.Right[thing])
                return false;
        }

        return true;
    }

    /// <summary>
    /// What is open by where it can start, deep ones before wide ones. Left out is what starts no sooner than something else could be put down before it and be in nobody's way:
    /// whatever can be done with it next can be done with the other put down first.
    /// </summary>
    private int Sort(int set, int[] starts, int[] order)
    {
        var (count, soonest) = (0, int.MaxValue);
        for (var thing = 0; thing < things.Count; thing++)
        {
            if ((set >> thing & 1) == 0)
                soonest = Math.Min(soonest, starts[thing] + things.Farthest[thing]);
        }

        for (var thing = 0; thing < things.Count; thing++)
        {
            if ((set >> thing & 1) == 1 || starts[thing] >= soonest)
                continue;
            var at = count++;
            for (; at > 0 && IsSooner(thing, order[at - 1], starts); at--)
                order[at] = order[at - 1];
            order[at] = thing;
        }

        return count;
    }

    private bool IsSooner(int one, int other, int[] starts) => starts[one] != starts[other] ? starts[one] < starts[other]
        : things.Depths[one] != things.Depths[other] ? things.Depths[one] > things.Depths[other]
        : things.Widths[one] > things.Widths[other];

    /// <summary>Whether a state known leaves every open thing at least as much room everywhere.</summary>
    /// <param name="from">Where the next thing starts at least.</param>
    private bool IsNeedless(int set, int from, int[] reach)
    {
        for (var thing = 0; thing < things.Count; thing++)
            reach[thing] = (set >> thing & 1) == 0 ? Math.Max(from, reach[thing]) : 0;
        if (!seen.TryGetValue(set, out var known))
            seen[set] = known = [];
        foreach (var other in known)
        {
            if (other.IsNoWorseThan(from, reach, room))
                return true;
        }

        if (known.Count < MostKept)
            known.Add(new(from, [.. reach], room.Since(from)));
        return false;
    }
}
