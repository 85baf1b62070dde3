using System.Runtime.InteropServices;

namespace GigRig.Planning.Fitting;

/// <summary>
/// Stands things one after another, each where a scoring rule likes it best, over many seeded orders.
/// Finds most layouts in milliseconds; finding none proves nothing.
/// </summary>
internal sealed class QuickFit(Surface surface, int seed)
{
    /// <summary>How a free spot is scored; lower is better, and farther right at the same depth never is.</summary>
    public static readonly Func<int, int, Pose, long>[] Likings =
    [
        (x, y, _) => ((long)x * 10_000) + y,
        (x, y, _) => ((long)y * 10_000) + x,
        (x, y, pose) => ((long)(x + pose.Width) * 10_000) + y + pose.Depth,
        (x, y, pose) => ((long)(y + pose.Depth) * 10_000) + x + pose.Width,
        (x, y, _) => (-(long)y * 10_000) + x,
    ];

    private readonly List<(int From, int To)> barred = [];

    /// <summary>The fullest layout found; complete when it has as many standings as there are shapes.</summary>
    public Layout Best(IReadOnlyList<Shape> shapes, int tries, CancellationToken cancel)
    {
        var random = new Random(seed);
        var order = Enumerable.Range(0, shapes.Count)
            .OrderByDescending(i => shapes[i].BodyArea)
            .ThenBy(i => i)
            .ToArray();
        Layout? best = null;
        for (var attempt = 0; attempt < tries && !cancel.IsCancellationRequested; attempt++)
        {
            var layout = Place(shapes, order, Likings[attempt % Likings.Length]);
            if (best is null || layout.Standings.Count > best.Standings.Count)
                best = layout;
            if (best.Standings.Count == shapes.Count)
                break;
            if (attempt % Likings.Length == Likings.Length - 1)
                Perturb(order, random);
        }

        return best ?? new Layout(surface, shapes);
    }

    /// <summary>Stands what is fixed, then the others in the given order, leaving out what finds no spot.</summary>
    public Layout Place(IReadOnlyList<Shape> shapes, IReadOnlyList<int> order, Func<int, int, Pose, long>? liking = null)
    {
        var layout = new Layout(surface, shapes);
        foreach (var item in order.Where(i => shapes[i].IsFixed).Concat(order.Where(i => !shapes[i].IsFixed)))
        {
            var spot = BestSpot(layout, shapes[item], liking ?? Likings[0]);
            if (spot is var (pose, x, y))
                layout.Stand(item, pose, x, y);
        }

        return layout;
    }

    /// <summary>Where one more thing is stood; null where there is no room.</summary>
    public (int Pose, int X, int Y)? BestSpot(Layout layout, Shape shape) => BestSpot(layout, shape, Likings[0]);

    private (int Pose, int X, int Y)? BestSpot(Layout layout, Shape shape, Func<int, int, Pose, long> liking)
    {
        if (shape.Poses is [{ Spot: var (fixedX, fixedY) } only])
            return layout.Admits(only, fixedX, fixedY) ? (0, fixedX, fixedY) : null;
        (int Pose, int X, int Y)? best = null;
        var bestScore = long.MaxValue;
        for (var p = 0; p < shape.Poses.Length; p++)
        {
            var pose = shape.Poses[p];
            foreach (var y in Depths(layout, pose))
            {
                if (LeastX(layout, pose, y, liking, bestScore) is { } left && layout.Admits(pose, left, y))
                    (best, bestScore) = ((p, left, y), liking(left, y, pose));
            }
        }

        return best;
    }

    /// <summary>The y where something touches something: an edge of the board, of a rail, or of a standing piece.</summary>
    private List<int> Depths(Layout layout, Pose pose)
    {
        var most = surface.Depth - pose.Depth;
        if (most < 0)
            return [];
        var touches = new bool[most + 1];
        foreach (var (from, to) in surface.StandsAt(pose.Depth))
            touches[from] = touches[to] = true;
        foreach (var piece in pose.Pieces)
        {
            Mark(surface.PlugSpace.Y - piece.Y);
            Mark(surface.PlugSpace.Rear - piece.Rear);
            foreach (var taken in layout.Pieces)
            {
                Mark(taken.Rear - piece.Y);
                Mark(taken.Y - piece.Rear);
            }
        }

        var ys = new List<int>();
        for (var y = 0; y <= most; y++)
        {
            if (touches[y] && surface.Bears(y, pose.Depth))
                ys.Add(y);
        }

        return ys;

        void Mark(int y)
        {
            if (y >= 0 && y <= most)
                touches[y] = true;
        }
    }

    /// <summary>The leftmost x at this y where no piece meets a taken one; null when there is none on the board that is liked better than the best so far.</summary>
    private int? LeastX(Layout layout, Pose pose, int y, Func<int, int, Pose, long> liking, long bestScore)
    {
        var x = 0;
        var most = surface.Width - pose.Width;
        foreach (var piece in pose.Pieces)
        {
            x = Math.Max(x, surface.PlugSpace.X - piece.X);
            most = Math.Min(most, surface.PlugSpace.Right - piece.Right);
        }

        if (x > most || liking(x, y, pose) >= bestScore)
            return null;
        Bar(layout, pose, y);

        // Pushing past one piece may run into another that was passed already, so until nothing is met. Farther right is never liked better.
        for (var met = true; met;)
        {
            met = false;
            foreach (var (from, to) in CollectionsMarshal.AsSpan(barred))
            {
                if (x <= from || x >= to)
                    continue;
                x = to;
                met = true;
            }

            if (x > most || liking(x, y, pose) >= bestScore)
                return null;
        }

        return x;
    }

    /// <summary>Between which x at this y the corner would put a piece onto a taken one.</summary>
    private void Bar(Layout layout, Pose pose, int y)
    {
        barred.Clear();
        foreach (var piece in pose.Pieces)
        {
            foreach (var taken in CollectionsMarshal.AsSpan(layout.Pieces))
            {
                if (y + piece.Y < taken.Rear && taken.Y < y + piece.Rear)
                    barred.Add((taken.X - piece.Right, taken.Right - piece.X));
            }
        }
    }

    private static void Perturb(int[] order, Random random)
    {
        var swaps = 1 + random.Next(Math.Max(1, order.Length / 2));
        for (var s = 0; s < swaps && order.Length > 1; s++)
        {
            var a = random.Next(order.Length);
            var b = random.Next(order.Length);
            (order[a], order[b]) = (order[b], order[a]);
        }
    }
}
