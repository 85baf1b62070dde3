namespace GigRig.Planning.Fitting;

/// <summary>
/// Decides whether bodies with their plugs, each turned one given way, can stand together. Two pieces that may not overlap lie left, right, in front or behind; each
/// of these is a least distance between two corners. Standing everything as far left and to the front as the distances chosen so far allow, the search branches on
/// two pieces that then overlap. Where none do, it has a layout; where no branch is left, it has a proof.
/// </summary>
internal sealed class FitSearch
{
    private const int Never = 1 << 20;

    /// <summary>How many nodes pass before the clock is looked at again.</summary>
    private const int NodesALook = 32;

    private readonly Surface surface;
    private readonly Stance[] stances;
    private readonly int things;
    private readonly int count;
    private readonly Following following;
    private readonly int mostNodes;
    private readonly Clock clock;
    private readonly Apart[] pairs;
    private readonly List<Edge> edges = [];
    private readonly Energy energy;
    private int nodes;
    private bool isGivenUp;

    private FitSearch(Surface surface, Stance[] stances, Following following, int mostNodes, Clock clock)
    {
        (this.surface, this.stances, this.following, this.mostNodes, this.clock) = (surface, stances, following, mostNodes, clock);
        things = stances.Length;
        count = things + surface.KeepOuts.Length;
        pairs = [.. Pairs()];
        energy = new(surface, stances);
    }

    /// <param name="along">Places along the board whose order is to be kept; a no then speaks of that order alone.</param>
    /// <returns>Where they stand, in their order; empty: proved that they cannot; null: too many nodes to tell.</returns>
    public static IReadOnlyList<Standing>? Decide(Surface surface, Stance[] stances, Following following, int mostNodes, Clock clock, out int nodes, int[]? along = null)
    {
        var search = new FitSearch(surface, stances, following, mostNodes, clock);
        var root = search.Root();
        if (along is not null)
            search.Follow(along);
        var found = search.Search(root, [.. search.pairs.Select((_, p) => p)]);
        nodes = search.nodes;
        if (found is not null)
            return [.. stances.Select((_, i) => new Standing(i, 0, found.Left[i], found.Front[i]))];
        return search.isGivenUp ? null : [];
    }

    private Windows Root()
    {
        var root = new Windows(count);
        for (var i = 0; i < things; i++)
        {
            var (left, right, front, rear) = Stance.Reach(stances[i].Pose, surface);
            (root.Left[i], root.Right[i], root.Front[i], root.Rear[i]) = (left, right, Math.Max(front, stances[i].FirstY), Math.Min(rear, stances[i].LastY));
            for (var j = 0; j < i; j++)
            {
                // Alike ones stand from left to right.
                if (ReferenceEquals(stances[i], stances[j]))
                    edges.Add(new(true, j, i, 0));
            }
        }

        for (var k = 0; k < surface.KeepOuts.Length; k++)
        {
            var i = things + k;
            root.Left[i] = root.Right[i] = surface.KeepOuts[k].X;
            root.Front[i] = root.Rear[i] = surface.KeepOuts[k].Y;
        }

        return root;
    }

    /// <summary>What lies apart at these places along the board is to lie apart so.</summary>
    private void Follow(int[] along)
    {
        for (var i = 0; i < things; i++)
        {
            for (var j = 0; j < things; j++)
            {
                if (along[i] + stances[i].Pose.Width <= along[j])
                    edges.Add(new(true, i, j, stances[i].Pose.Width));
            }
        }
    }

    /// <summary>Bodies first, larger ones before smaller: what they leave open, the plugs settle.</summary>
    private IEnumerable<Apart> Pairs()
    {
        var all = new List<Apart>();
        for (var i = 0; i < things; i++)
        {
            for (var j = i + 1; j < things; j++)
                AddOrder(i, j);
            for (var j = i + 1; j < things; j++)
                AddPieces(i, stances[i].Pose.Pieces, j, stances[j].Pose.Pieces);
            for (var k = 0; k < surface.KeepOuts.Length; k++)
                AddPieces(i, stances[i].Pose.Pieces, things + k, [surface.KeepOuts[k] with { X = 0, Y = 0 }]);
        }

        return all.OrderByDescending(a => a.Weight);

        // Whatever cannot start level starts one after the other, with what plugs add. Follows from the pieces, and says more at once.
        void AddOrder(int i, int j)
        {
            var (iFirst, jFirst) = (following.Least(stances[i], stances[j]), following.Least(stances[j], stances[i]));
            if (iFirst > 0 && jFirst > 0)
                all.Add(new(i, j, iFirst, jFirst, Never, Never, (1L << 41) + Math.Min(iFirst, jFirst)));
        }

        void AddPieces(int i, Box[] ones, int j, Box[] others)
        {
            for (var p = 0; p < ones.Length; p++)
            {
                for (var q = 0; q < others.Length; q++)
                {
                    var (one, other) = (ones[p], others[q]);
                    all.Add(new(
                        i,
                        j,
                        one.Right - other.X,
                        other.Right - one.X,
                        one.Rear - other.Y,
                        other.Rear - one.Y,
                        ((p == 0 && q == 0 ? 1L : 0) << 40) + Math.Min((long)one.Width * one.Depth, (long)other.Width * other.Depth)));
                }
            }
        }
    }

    private Windows? Search(Windows node, int[] open)
    {
        nodes++;
        isGivenUp |= nodes > mostNodes || (nodes % NodesALook == 0 && clock.IsUp);
        if (isGivenUp)
            return null;
        var depth = edges.Count;
        var found = Propagate(node, ref open) ? Branch(node, open) : null;
        edges.RemoveRange(depth, edges.Count - depth);
        return found;
    }

    private Windows? Branch(Windows node, int[] open)
    {
        var chosen = -1;
        var fewest = int.MaxValue;
        foreach (var p in open)
        {
            if (!pairs[p].OverlapsAt(node))
                continue;
            var ways = 0;
            for (var way = 0; way < 4; way++)
                ways += pairs[p].Allows(node, way) ? 1 : 0;
            if (ways >= fewest)
                continue;
            (chosen, fewest) = (p, ways);
            if (ways == 2)
                break;
        }

        if (chosen < 0)
            return node;
        var depth = edges.Count;
        for (var way = 0; way < 4 && !isGivenUp; way++)
        {
            if (!pairs[chosen].Allows(node, way))
                continue;
            edges.Add(pairs[chosen].Edge(way));
            if (Search(node.Copy(), open) is { } found)
                return found;
            edges.RemoveAt(edges.Count - 1);

            // From here on it is known not to be so.
            edges.Add(pairs[chosen].Edge(way).Negated());
        }

        edges.RemoveRange(depth, edges.Count - depth);
        return null;
    }

    /// <summary>Narrows the windows until nothing changes; false where something finds no place. Drops the pairs that lie apart for good.</summary>
    private bool Propagate(Windows node, ref int[] open)
    {
        for (var changed = true; changed;)
        {
            changed = false;
            for (var e = 0; e < edges.Count; e++)
            {
                if (!edges[e].Narrow(node, ref changed))
                    return false;
            }

            if (!surface.IsPlain && !KeepOnRails(node, ref changed))
                return false;
            if (changed)
                continue;
            var kept = 0;
            var rest = new int[open.Length];
            foreach (var p in open)
            {
                var verdict = pairs[p].Look(node, out var only);
                if (verdict == 0)
                    return false;
                if (verdict < 0)
                    continue;
                if (verdict == 1)
                {
                    edges.Add(pairs[p].Edge(only));
                    if (!edges[^1].Narrow(node, ref changed))
                        return false;
                    continue;
                }

                rest[kept++] = p;
            }

            open = rest[..kept];
        }

        return energy.Suffices(node);
    }

    private bool KeepOnRails(Windows node, ref bool changed)
    {
        for (var i = 0; i < things; i++)
        {
            var (front, rear) = (int.MaxValue, int.MinValue);
            foreach (var (from, to) in stances[i].Spans)
            {
                if (to < node.Front[i] || from > node.Rear[i])
                    continue;
                front = Math.Min(front, Math.Max(from, node.Front[i]));
                rear = Math.Max(rear, Math.Min(to, node.Rear[i]));
            }

            if (front > rear)
                return false;
            changed |= front != node.Front[i] || rear != node.Rear[i];
            (node.Front[i], node.Rear[i]) = (front, rear);
        }

        return true;
    }
}
