using GigRig.Planning.Fitting;

namespace GigRig.Planning.Arranging;

/// <summary>
/// Stands the same things better. Starts from what it is given, from the best row where they stand in one, and from chain order either way; then takes a few things
/// off and puts each back where it stands best, again and again (ruin and recreate: Schrimpf and others 2000; with blinks: Christiaens and Vanden Berghe 2020).
/// Worse layouts are walked through, the best is kept. Anytime, bounded by a count of tries in vain, never worse than what it was given.
/// </summary>
internal sealed class Arranger
{
    private const int MostOff = 4;

    /// <summary>How often, in a hundred, a spot is overlooked, so that putting back the same things ends differently.</summary>
    private const int Blinks = 3;

    private readonly Arrangement arrangement;
    private readonly Surface surface;
    private readonly Random random;
    private readonly int tries;
    private readonly QuickFit quick;
    private readonly FreeSpots spots;
    private readonly int[] movable;
    private readonly Standing?[] stood;

    public Arranger(Arrangement arrangement, Surface surface, PlannerOptions options)
    {
        this.arrangement = arrangement;
        this.surface = surface;
        random = new Random(options.Seed);
        tries = options.ArrangeTries;
        quick = new(surface, options.Seed);
        spots = new(surface, arrangement);
        movable = [.. Enumerable.Range(0, arrangement.Shapes.Length).Where(i => !arrangement.Shapes[i].IsFixed)];
        stood = new Standing?[arrangement.Shapes.Length];
    }

    /// <param name="given">One standing for each thing, by its position, breaking no rule.</param>
    /// <param name="found">Told of each better layout.</param>
    public Standing[] Improve(Standing[] given, Clock clock, Action<Standing[]> found)
    {
        if (movable.Length == 0)
            return given;
        var (best, bestCost) = (given, arrangement.CostOf(given));
        foreach (var start in Starts(clock).TakeWhile(_ => !clock.IsUp))
            Keep(start);
        var (now, nowCost) = (best, bestCost);
        for (var since = 0; since < tries && !clock.IsUp; since++)
        {
            if (Varied(now) is not { } next)
                continue;
            var cost = arrangement.CostOf(next);

            // After a better layout detours of up to a tenth are walked; the longer nothing came of it, the shorter ones.
            var detour = (bestCost.Leads / 10 + 10) * (tries - since) / tries;
            if (cost.CompareTo(nowCost) > 0 && cost.Leads > bestCost.Leads + (random.Next(4) == 0 ? detour : 0))
                continue;
            (now, nowCost) = (next, cost);
            if (Keep(next))
                since = 0;
        }

        return best;

        bool Keep(Standing[] layout)
        {
            var cost = arrangement.CostOf(layout);
            if (cost.CompareTo(bestCost) >= 0)
                return false;
            (best, bestCost) = (layout, cost);
            found(layout);
            return true;
        }
    }

    private IEnumerable<Standing[]> Starts(Clock clock)
    {
        if (new BestRow(arrangement, surface).Find(clock) is { } row)
            yield return row;
        int[] chain = [.. arrangement.Leads.SelectMany(l => new[] { l.From, l.To }).Concat(Enumerable.Range(0, stood.Length)).Distinct()];
        foreach (var order in new[] { chain, [.. chain.Reverse()] })
        {
            foreach (var liking in QuickFit.Likings)
            {
                if (Placed(order, liking) is { } layout)
                    yield return layout;
            }
        }
    }

    private Standing[]? Placed(IReadOnlyList<int> order, Func<int, int, Pose, long> liking)
    {
        var layout = quick.Place(arrangement.Shapes, order, liking);
        return layout.Standings.Count == stood.Length ? [.. layout.Standings.OrderBy(s => s.Item)] : null;
    }

    /// <summary>Another layout near this one; null where the things that were taken off did not all find a place again.</summary>
    private Standing[]? Varied(Standing[] now)
    {
        if (random.Next(8) == 0)
            return Placed(Reordered(now), QuickFit.Likings[random.Next(QuickFit.Likings.Length)]);
        var off = TakenOff(now);
        var layout = new Layout(surface, arrangement.Shapes);
        foreach (var standing in now)
        {
            stood[standing.Item] = null;
            if (off.Contains(standing.Item))
                continue;
            layout.Stand(standing.Item, standing.Pose, standing.X, standing.Y);
            stood[standing.Item] = standing;
        }

        foreach (var item in off)
        {
            if (BestSpot(item, layout) is not { } spot)
                return null;
            layout.Stand(item, spot.Pose, spot.X, spot.Y);
            stood[item] = spot;
        }

        return [.. layout.Standings.OrderBy(s => s.Item)];
    }

    private Standing? BestSpot(int item, Layout layout)
    {
        Standing? best = null;
        var bestCost = new Cost(long.MaxValue, 0, 0);
        var anchor = random.Next(surface.Width);
        foreach (var spot in spots.Of(item, layout, stood))
        {
            if (random.Next(100) < Blinks)
                continue;
            var cost = CostOf(spot, anchor);
            if (cost.CompareTo(bestCost) < 0)
                (best, bestCost) = (spot, cost);
        }

        return best;
    }

    /// <summary>Beside what stands already. With none of its leads' other ends there, it is drawn to some place along the board.</summary>
    private Cost CostOf(Standing spot, int anchor)
    {
        long leads = 0;
        var ends = 0;
        foreach (var (from, to) in arrangement.Others[spot.Item])
        {
            if (stood[from == spot.Item ? to : from] is not { } other)
                continue;
            ends++;
            leads += from == spot.Item ? arrangement.Length(spot, other) : arrangement.Length(other, spot);
        }

        if (ends == 0)
            leads = Math.Abs(spot.X - anchor);
        return new(leads, arrangement.ReachOf(spot), Array.Exists(stood, s => s?.Y == spot.Y) ? 0 : 1);
    }

    /// <summary>A few things at random, next to each other in the chain, or near each other on the board; in the order in which they go back.</summary>
    private List<int> TakenOff(Standing[] now)
    {
        var count = 1 + random.Next(Math.Min(MostOff, movable.Length));
        var first = movable[random.Next(movable.Length)];
        var rest = movable.Where(i => i != first);
        var others = random.Next(3) switch
        {
            0 => rest.OrderBy(_ => random.Next()),
            1 => rest.OrderBy(i => Math.Abs(now[i].X - now[first].X) + Math.Abs(now[i].Y - now[first].Y)),
            _ => rest.OrderBy(i => StepsAlong(first, i)).ThenBy(_ => random.Next()),
        };
        var off = others.Take(count - 1).Append(first).ToList();
        for (var i = off.Count - 1; i > 0; i--)
        {
            var j = random.Next(i + 1);
            (off[i], off[j]) = (off[j], off[i]);
        }

        return off;
    }

    private int StepsAlong(int first, int other) => Array.Exists(arrangement.Others[first], l => l.From == other || l.To == other) ? 0 : 1;

    /// <summary>The things from left to right as they stand, with one moved or two changed over.</summary>
    private int[] Reordered(Standing[] now)
    {
        var order = now.OrderBy(s => s.X).ThenBy(s => s.Y).Select(s => s.Item).ToList();
        var (a, b) = (random.Next(order.Count), random.Next(order.Count));
        if (random.Next(2) == 0)
        {
            (order[a], order[b]) = (order[b], order[a]);
        }
        else
        {
            var moved = order[a];
            order.RemoveAt(a);
            order.Insert(Math.Min(b, order.Count), moved);
        }

        return [.. order];
    }
}
