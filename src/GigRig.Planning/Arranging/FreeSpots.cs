using GigRig.Planning.Fitting;

namespace GigRig.Planning.Arranging;

/// <summary>
/// Where one more thing may stand beside others, as far as it is worth looking: at any depth where it touches something, is level with an end of its leads or in
/// line with another front, and there at the ends of every free stretch and where its leads run straight.
/// </summary>
internal sealed class FreeSpots(Surface surface, Arrangement arrangement)
{
    private readonly Dictionary<Pose, Stance?> stances = new(ReferenceEqualityComparer.Instance);
    private readonly List<(int From, int To)> blocked = [];
    private readonly List<int> xs = [];

    public IEnumerable<Standing> Of(int item, Layout layout, Standing?[] stood)
    {
        var shape = arrangement.Shapes[item];
        for (var p = 0; p < shape.Poses.Length; p++)
        {
            var pose = shape.Poses[p];
            if (!stances.TryGetValue(pose, out var stance))
                stances[pose] = stance = Stance.Of(pose, surface);
            if (stance is null)
                continue;
            var level = arrangement.LevelWith(item, p, stood).ToArray();
            var (left, right, _, _) = Stance.Reach(pose, surface);
            foreach (var y in Depths(stance, layout, level, stood))
            {
                Block(pose, y, layout, left, right);
                FindXs(pose, y, layout, level, left, right);
                foreach (var x in xs)
                {
                    if (surface.SwitchSpacing == 0 || layout.Admits(pose, x, y))
                        yield return new(item, p, x, y);
                }
            }
        }
    }

    private static SortedSet<int> Depths(Stance stance, Layout layout, (int X, int Y)[] level, Standing?[] stood)
    {
        var ys = new SortedSet<int>();
        foreach (var (from, to) in stance.Spans)
        {
            ys.Add(from);
            ys.Add(to);
        }

        foreach (var piece in stance.Pose.Pieces)
        {
            foreach (var taken in layout.Pieces)
            {
                Add(taken.Rear - piece.Y);
                Add(taken.Y - piece.Rear);
            }
        }

        foreach (var (_, y) in level)
            Add(y);
        foreach (var other in stood)
        {
            if (other is { } at)
                Add(at.Y);
        }

        return ys;

        void Add(int y)
        {
            foreach (var (from, to) in stance.Spans)
            {
                if (from <= y && y <= to)
                    ys.Add(y);
            }
        }
    }

    /// <summary>The open stretches of x that some standing piece rules out at this depth, merged and in order.</summary>
    private void Block(Pose pose, int y, Layout layout, int left, int right)
    {
        blocked.Clear();
        foreach (var piece in pose.Pieces)
        {
            var (front, rear) = (y + piece.Y, y + piece.Rear);
            foreach (var taken in layout.Pieces)
            {
                if (front >= taken.Rear || taken.Y >= rear)
                    continue;
                var (from, to) = (taken.X - piece.Right, taken.Right - piece.X);
                if (from < right && to > left)
                    blocked.Add((from, to));
            }
        }

        blocked.Sort();
    }

    private void FindXs(Pose pose, int y, Layout layout, (int X, int Y)[] level, int left, int right)
    {
        xs.Clear();
        var start = left;
        foreach (var (from, to) in blocked)
        {
            if (from >= start)
                Stretch(start, Math.Min(from, right));
            start = Math.Max(start, to);
        }

        Stretch(start, right);

        void Stretch(int from, int to)
        {
            if (from > to)
                return;
            xs.Add(from);
            if (to > from)
                xs.Add(to);
            foreach (var (x, _) in level)
                Within(x);
            foreach (var (x, _) in pose.Switches)
                Within((surface.Width / 2) - x);
            if (surface.SwitchSpacing > 0)
                BesideSwitches();

            void Within(int x)
            {
                if (from < x && x < to)
                    xs.Add(x);
            }

            void BesideSwitches()
            {
                foreach (var (sx, sy) in layout.Switches)
                {
                    foreach (var (x, switchY) in pose.Switches)
                    {
                        var away = y + switchY - sy;
                        var square = (surface.SwitchSpacing * surface.SwitchSpacing) - (away * away);
                        if (square <= 0)
                            continue;
                        var aside = (int)Math.Ceiling(Math.Sqrt(square));
                        Within(sx + aside - x);
                        Within(sx - aside - x);
                    }
                }
            }
        }
    }
}
