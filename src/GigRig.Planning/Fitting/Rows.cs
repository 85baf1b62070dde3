namespace GigRig.Planning.Fitting;

/// <summary>
/// What rows say. Bodies too deep to stand behind one another stand in one row, and the shortest row of them, widths and the gaps that plugs force, must go
/// into the board's width. This proves many sets misfits in no time, and says which other things would not have helped.
/// </summary>
internal sealed class Rows(Surface surface)
{
    private const int MostCombinations = 256;
    private const int LongestRow = 12;

    private readonly Dictionary<string, Stance[]> ways = new(StringComparer.Ordinal);
    private readonly List<Stance> stances = [];
    private readonly Dictionary<Stance, int> numbers = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<(int Left, int Right), int> gaps = [];
    private readonly Dictionary<(int Big, int Small), int> gapLosses = [];
    private readonly Dictionary<string, int> lengths = new(StringComparer.Ordinal);

    /// <summary>False where the row is too long however the things are turned. Sooner answered than by how much.</summary>
    public bool Admits(IReadOnlyList<Shape> shapes)
    {
        var each = new Stance[shapes.Count][];
        long count = 1;
        for (var i = 0; i < each.Length; i++)
        {
            each[i] = WaysOf(shapes[i]);
            count *= each[i].Length;
            if (count is 0 or > MostCombinations)
                return count > 0;
        }

        var turned = new Stance[each.Length];
        for (var combination = 0L; combination < count; combination++)
        {
            // Turned ones first: they are more often the shallow ones.
            var rest = count - 1 - combination;
            for (var i = 0; i < each.Length; i++)
            {
                turned[i] = each[i][rest % each[i].Length];
                rest /= each[i].Length;
            }

            if (AdmitsTurned(turned))
                return true;
        }

        return false;
    }

    /// <summary>By how many millimetres the row is too long however the things are turned; null where that is not so, or there are too many ways to look.</summary>
    public int? Excess(IReadOnlyList<Shape> shapes)
    {
        var least = int.MaxValue;
        foreach (var combination in CombinationsOf(shapes) ?? [[]])
        {
            least = Math.Min(least, ExcessOf(combination));
            if (least <= 0)
                return null;
        }

        return least;
    }

    /// <summary>How much shorter a row may get, at most, when a thing of the second shape in it makes way for one of the first; null where that is no like for like.</summary>
    public int? Loss(Shape big, Shape small)
    {
        var worst = int.MinValue;
        foreach (var b in WaysOf(big))
        {
            var best = WaysOf(small).Where(s => s.Pose.Depth <= b.Pose.Depth).Select(s => s.Pose.Width - b.Pose.Width + GapLoss(b, s)).DefaultIfEmpty(int.MaxValue).Min();
            if (best == int.MaxValue)
                return null;
            worst = Math.Max(worst, best);
        }

        return worst;
    }

    /// <summary>Makes the shapes known, so that losses count every neighbour there can be.</summary>
    public void Know(IEnumerable<Shape> shapes)
    {
        foreach (var shape in shapes)
            WaysOf(shape);
    }

    private Stance[] WaysOf(Shape shape)
    {
        if (ways.TryGetValue(shape.Key, out var known))
            return known;
        var found = Stance.AllOf(shape, surface);
        foreach (var stance in found)
        {
            numbers[stance] = stances.Count;
            stances.Add(stance);
        }

        return ways[shape.Key] = found;
    }

    private IEnumerable<Stance[]>? CombinationsOf(IReadOnlyList<Shape> shapes)
    {
        var each = shapes.Select(WaysOf).ToArray();
        var count = each.Aggregate(1L, (product, w) => Math.Min(product * w.Length, MostCombinations + 1));
        return count > MostCombinations ? null : each.Aggregate(
            (IEnumerable<Stance[]>)[[]],
            (sofar, way) => sofar.SelectMany(_ => way, (taken, next) => (Stance[])[.. taken, next]));
    }

    private bool AdmitsTurned(Stance[] turned)
    {
        var row = new List<Stance>(turned.Length);
        foreach (var stance in turned)
        {
            if (2 * stance.Pose.Depth > surface.Depth)
                row.Add(stance);
        }

        if (IsTooLong(row))
            return false;
        foreach (var shallow in turned)
        {
            if (2 * shallow.Pose.Depth > surface.Depth)
                continue;
            row.Clear();
            row.Add(shallow);
            foreach (var deep in turned)
            {
                if (2 * deep.Pose.Depth > surface.Depth && deep.Pose.Depth + shallow.Pose.Depth > surface.Depth)
                    row.Add(deep);
            }

            if (IsTooLong(row))
                return false;
        }

        return true;
    }

    private bool IsTooLong(List<Stance> row)
    {
        var widths = 0;
        var gaps = 0;
        foreach (var stance in row)
        {
            widths += stance.Pose.Width;
            gaps += stance.LongestSides;
        }

        return widths > surface.Width || (widths + gaps > surface.Width && Length([.. row]) > surface.Width);
    }

    /// <summary>The excess of the longest row: of the deep bodies, or of a shallow one with those too deep to stand behind it.</summary>
    private int ExcessOf(Stance[] turned)
    {
        var deep = turned.Where(s => 2 * s.Pose.Depth > surface.Depth).ToArray();
        return turned.Where(s => 2 * s.Pose.Depth <= surface.Depth)
            .Select(s => (Stance[])[.. deep.Where(d => d.Pose.Depth + s.Pose.Depth > surface.Depth), s])
            .Append(deep)
            .Max(row => Length(row) - surface.Width);
    }

    private int Length(Stance[] row)
    {
        var widths = row.Sum(s => s.Pose.Width);
        if (row.Length is < 2 or > LongestRow)
            return widths;
        var key = string.Create(row.Length, row, (chars, stances) =>
        {
            for (var i = 0; i < chars.Length; i++)
                chars[i] = (char)numbers[stances[i]];
            chars.Sort();
        });
        if (!lengths.TryGetValue(key, out var length))
            lengths[key] = length = widths + ShortestPath.Through([.. row.Select(a => row.Select(b => Gap(a, b)).ToArray())]);
        return length;
    }

    private int Gap(Stance left, Stance right)
    {
        var key = (numbers[left], numbers[right]);
        if (!gaps.TryGetValue(key, out var gap))
            gaps[key] = gap = PlugGap.Least(left, right);
        return gap;
    }

    /// <summary>How much smaller the gaps to both neighbours may get, whoever they are.</summary>
    private int GapLoss(Stance big, Stance small)
    {
        var key = (numbers[big], numbers[small]);
        if (!gapLosses.TryGetValue(key, out var loss))
            gapLosses[key] = loss = Math.Max(0, stances.Max(j => Gap(small, j) - Gap(big, j))) + Math.Max(0, stances.Max(j => Gap(j, small) - Gap(j, big)));
        return loss;
    }
}
