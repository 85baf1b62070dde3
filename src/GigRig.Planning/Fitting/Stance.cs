namespace GigRig.Planning.Fitting;

/// <summary>A pose with every front edge it may have on this surface: rails and the reach of its plugs decide.</summary>
internal sealed class Stance
{
    private (Stance Front, Stance Rear)? halves;

    private Stance(Pose pose, (int From, int To)[] spans)
    {
        Pose = pose;
        Spans = spans;
        LeftSide = [.. pose.Pieces.Where(p => p.X < 0)];
        RightSide = [.. pose.Pieces.Where(p => p.Right > pose.Width)];
        LongestSides = pose.Pieces.Max(p => Math.Max(0, -p.X)) + pose.Pieces.Max(p => Math.Max(0, p.Right - pose.Width));
    }

    public Pose Pose { get; }

    /// <summary>Closed intervals of y, ascending; at least one.</summary>
    public (int From, int To)[] Spans { get; }

    public int FirstY => Spans[0].From;

    public int LastY => Spans[^1].To;

    /// <summary>The band the body covers wherever it stands: from here …</summary>
    public int CoreFrom => LastY;

    /// <summary>… up to here. Not above <see cref="CoreFrom"/> when there is no such band.</summary>
    public int CoreTo => FirstY + Pose.Depth;

    public bool HasCore => CoreFrom < CoreTo;

    public bool AlwaysCrosses(int line) => CoreFrom <= line && line < CoreTo;

    /// <summary>The same nearer to the front and nearer to the rear, where there is more than one front edge to stand at.</summary>
    public (Stance Front, Stance Rear) Halves => halves ??= (
        new(Pose, [.. Spans.Where(s => s.From <= MiddleY).Select(s => (s.From, Math.Min(s.To, MiddleY)))]),
        new(Pose, [.. Spans.Where(s => s.To > MiddleY).Select(s => (Math.Max(s.From, MiddleY + 1), s.To))]));

    /// <summary>The same with its front edge no nearer to the front than this and no nearer to the rear than that; null where it cannot stand so.</summary>
    public Stance? Within(int from, int to)
    {
        if (from <= FirstY && LastY <= to)
            return this;
        (int From, int To)[] left = [.. Spans.Select(s => (From: Math.Max(s.From, from), To: Math.Min(s.To, to))).Where(s => s.From <= s.To)];
        return left.Length == 0 ? null : new(Pose, left);
    }

    private int MiddleY => FirstY + ((LastY - FirstY) / 2);

    public IEnumerable<int> Ys => Spans.SelectMany(s => Enumerable.Range(s.From, s.To - s.From + 1));

    /// <summary>How far plugs stick out to the left and to the right, in all: no gap to a neighbour is longer than this and the same of the neighbour.</summary>
    public int LongestSides { get; }

    /// <summary>The plugs that stick out to the left.</summary>
    public Box[] LeftSide { get; }

    /// <summary>The plugs that stick out to the right.</summary>
    public Box[] RightSide { get; }

    /// <summary>Every way a shape can stand on the surface, in the order of its poses.</summary>
    public static Stance[] AllOf(Shape shape, Surface surface) => [.. shape.Poses.Select(p => Of(p, surface)).OfType<Stance>()];

    /// <summary>Where the pose can stand on the surface; null when it cannot.</summary>
    public static Stance? Of(Pose pose, Surface surface)
    {
        var (left, right, front, rear) = Reach(pose, surface);
        if (left > right || front > rear)
            return null;
        var spans = surface.StandsAt(pose.Depth)
            .Select(s => (From: Math.Max(s.From, front), To: Math.Min(s.To, rear)))
            .Where(s => s.From <= s.To)
            .ToArray();
        return spans.Length == 0 ? null : new(pose, spans);
    }

    /// <summary>The least and most x, and the least and most y, at which body and plugs keep within their bounds.</summary>
    public static (int Left, int Right, int Front, int Rear) Reach(Pose pose, Surface surface)
    {
        var left = Math.Max(0, pose.Pieces.Max(b => surface.PlugSpace.X - b.X));
        var right = Math.Min(surface.Width - pose.Width, pose.Pieces.Min(b => surface.PlugSpace.Right - b.Right));
        var front = Math.Max(0, pose.Pieces.Max(b => surface.PlugSpace.Y - b.Y));
        var rear = Math.Min(surface.Depth - pose.Depth, pose.Pieces.Min(b => surface.PlugSpace.Rear - b.Rear));
        return pose.Spot is var (x, y)
            ? (Math.Max(left, x), Math.Min(right, x), Math.Max(front, y), Math.Min(rear, y))
            : (left, right, front, rear);
    }
}
