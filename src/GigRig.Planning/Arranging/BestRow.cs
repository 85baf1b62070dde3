using GigRig.Planning.Fitting;

namespace GigRig.Planning.Arranging;

/// <summary>Where no two of the things can stand behind one another, they stand in one row: the order in which leads are shortest, pushed together from the left.</summary>
internal sealed class BestRow(Arrangement arrangement, Surface surface)
{
    /// <summary>Null where things may stand behind one another, something is fixed, there are too many, the row is too long so, or time ran out.</summary>
    public Standing[]? Find(Clock clock)
    {
        var ways = arrangement.Shapes.Select(shape => shape.Poses.Select((pose, index) => (Stance: Stance.Of(pose, surface), Index: index)).Where(w => w.Stance is not null).ToArray()).ToArray();
        if (ways.Length < 2 || arrangement.Shapes.Any(s => s.IsFixed) || ways.Any(w => w.Length == 0) || !IsOneRow(ways.Select(w => w.Min(x => x.Stance!.Pose.Depth))))
            return null;
        var things = ways.Select((all, i) => all.Select(w => WayOf(i, w.Index, w.Stance!)).ToArray()).ToArray();
        var links = arrangement.Leads.Select(l => new RowLink(l.From, l.To)).ToArray();
        return RowOrder.Best(things, links, (a, p, b, q) => PlugGap.Least(ways[a][p].Stance!, ways[b][q].Stance!), clock) is var (order, _)
            ? Pushed([.. order.Select(o => (o.Thing, ways[o.Thing][o.Way].Index))])
            : null;
    }

    private bool IsOneRow(IEnumerable<int> depths) => depths.Order().Take(2).Sum() > surface.Depth;

    private RowWay WayOf(int item, int pose, Stance stance)
    {
        var (@out, @in) = arrangement.EndsAlong(item, pose);
        return new(stance.Pose.Width, @out, @in);
    }

    private Standing[]? Pushed(IReadOnlyList<(int Item, int Pose)> row)
    {
        var layout = new Layout(surface, arrangement.Shapes);
        var stood = new Standing?[arrangement.Shapes.Length];
        var spots = new FreeSpots(surface, arrangement);
        foreach (var (item, pose) in row)
        {
            var next = spots.Of(item, layout, stood)
                .Where(s => s.Pose == pose && layout.Standings.All(before => before.X < s.X))
                .OrderBy(s => s.X).ThenBy(s => s.Y)
                .Take(1).ToArray();
            if (next is not [var spot])
                return null;
            layout.Stand(item, pose, spot.X, spot.Y);
            stood[item] = spot;
        }

        return [.. layout.Standings.OrderBy(s => s.Item)];
    }
}
