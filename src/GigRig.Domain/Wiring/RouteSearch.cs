using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Wiring;

/// <summary>
/// A shortest way by right angles around upright rectangles, exact: among rectangles some shortest way runs on the lines through their edges and the two ends
/// (R. C. Larson, V. O. K. Li: Finding minimum rectilinear distance paths in the presence of barriers, Networks 11, 1981). That grid is searched with A*.
/// </summary>
internal sealed class RouteSearch
{
    // Corners count for less than the last millimetre: a way has never a thousand of them.
    private const long Millimetre = 1000;

    private readonly IReadOnlyList<Rect> bodies;
    private readonly int[] xs;
    private readonly int[] ys;
    private readonly (int X, int Y) goal;

    private RouteSearch(Point to, Point from, IReadOnlyList<Rect> bodies)
    {
        this.bodies = bodies;
        xs = Lines(bodies.SelectMany(body => new[] { body.X, body.Right }).Append(from.X).Append(to.X));
        ys = Lines(bodies.SelectMany(body => new[] { body.Y, body.Rear }).Append(from.Y).Append(to.Y));
        goal = NodeAt(to);
    }

    /// <summary>A body that an end lies within is no obstacle: its jack is on top, or bodies stand in each other. Straight through where there is no way around.</summary>
    public static LeadRoute Between(Point from, Point to, IEnumerable<Rect> bodies)
    {
        var inTheWay = bodies.Where(body => !Within(body, from) && !Within(body, to)).ToList();
        var search = new RouteSearch(to, from, inTheWay);
        return new(search.Find(search.NodeAt(from)) ?? [from, new(to.X, from.Y), to]);
    }

    private ValueList<Point>? Find((int X, int Y) start)
    {
        var best = new Dictionary<Step, long>();
        var cameFrom = new Dictionary<Step, Step>();
        var open = new PriorityQueue<Step, long>();
        Reach(new(start, Upright: null), 0, null);
        while (open.TryDequeue(out var step, out var estimate))
        {
            if (step.At == goal)
                return Corners(step, cameFrom);
            var cost = best[step];
            if (estimate > cost + Rest(step.At))
                continue;
            foreach (var (x, y, upright) in new[] { (1, 0, false), (-1, 0, false), (0, 1, true), (0, -1, true) })
            {
                var next = (X: step.At.X + x, Y: step.At.Y + y);
                if (next.X >= 0 && next.X < xs.Length && next.Y >= 0 && next.Y < ys.Length && IsFree(step.At, next))
                    Reach(new(next, upright), cost + (Millimetre * Length(step.At, next)) + (step.Upright is { } before && before != upright ? 1 : 0), step);
            }
        }

        return null;

        void Reach(Step step, long cost, Step? from)
        {
            if (best.TryGetValue(step, out var known) && known <= cost)
                return;
            best[step] = cost;
            if (from is { } origin)
                cameFrom[step] = origin;
            open.Enqueue(step, cost + Rest(step.At));
        }
    }

    private long Rest((int X, int Y) at) => Millimetre * Length(at, goal);

    private int Length((int X, int Y) a, (int X, int Y) b) => Math.Abs(xs[a.X] - xs[b.X]) + Math.Abs(ys[a.Y] - ys[b.Y]);

    /// <summary>Between neighbours of the grid a piece lies wholly within a body or not at all. Along an edge it is free.</summary>
    private bool IsFree((int X, int Y) a, (int X, int Y) b)
    {
        var (left, right) = (Math.Min(xs[a.X], xs[b.X]), Math.Max(xs[a.X], xs[b.X]));
        var (front, rear) = (Math.Min(ys[a.Y], ys[b.Y]), Math.Max(ys[a.Y], ys[b.Y]));
        return bodies.All(body => left >= body.Right.Value || right <= body.X.Value || front >= body.Rear.Value || rear <= body.Y.Value);
    }

    private ValueList<Point> Corners(Step last, Dictionary<Step, Step> cameFrom)
    {
        var nodes = new List<(int X, int Y)> { last.At };
        for (var step = last; cameFrom.TryGetValue(step, out var before); step = before)
            nodes.Add(before.At);
        nodes.Reverse();
        // Plugs that meet tip to tip: both ends all the same.
        if (nodes.Count == 1)
            nodes.Add(nodes[0]);
        return nodes.Where((node, i) => i == 0 || i == nodes.Count - 1 || (nodes[i - 1].X == node.X) != (node.X == nodes[i + 1].X)).Select(PointAt).ToValueList();
    }

    private Point PointAt((int X, int Y) node) => new(xs[node.X].Mm, ys[node.Y].Mm);

    private (int X, int Y) NodeAt(Point point) => (Array.BinarySearch(xs, point.X.Value), Array.BinarySearch(ys, point.Y.Value));

    private static int[] Lines(IEnumerable<Millimetres> places) => [.. places.Select(place => place.Value).Distinct().Order()];

    internal static bool Within(Rect body, Point point) => point.X > body.X && point.X < body.Right && point.Y > body.Y && point.Y < body.Rear;

    /// <summary>A node, and the way it was entered; the start is entered neither way.</summary>
    private readonly record struct Step((int X, int Y) At, bool? Upright);
}
