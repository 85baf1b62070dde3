using GigRig.Planning.Fitting;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Bodies too deep to stand behind one another stand in one row. Cut the row at any one of them: whatever stands left of it keeps its least gap to the right, whatever
/// stands right of it its least gap to the left. So the widths, and for all but one of them the lesser of its two least gaps, add up to no more than the board's width.
/// </summary>
internal sealed class RowBounds
{
    private readonly Stance[][] ways;
    private readonly Stance[] supply;
    private readonly int width;
    private readonly Dictionary<Stance, int> gaps;

    private RowBounds(Question question, TurningSearch turning)
    {
        width = question.Surface.Width;
        ways = [.. question.Candidates.Select(c => turning.WaysOf(c.Shape))];
        supply = question.SupplyShape is { } shape ? turning.WaysOf(shape) : [];
        gaps = LeastGaps([.. ways.SelectMany(w => w).Concat(supply).Where(w => 2 * w.Pose.Depth > question.Surface.Depth).Distinct()], turning.Following);
    }

    /// <summary>
    /// Bounds one of which every set keeps: that of sets with a body whose gap is small, which is the one left out, and that of sets with no such body.
    /// None where nothing stands in a row.
    /// </summary>
    public static Bound[] Of(Question question, TurningSearch turning)
    {
        var row = new RowBounds(question, turning);
        if (row.gaps.Count == 0)
            return [];
        var most = row.gaps.Values.Max();
        var small = row.gaps.Values.Where(gap => 2 * gap <= most).DefaultIfEmpty(-1).Max();
        return small < 0 || small == most ? [row.For(most, 0)] : [row.For(small, 0), row.For(most, small + 1)];
    }

    /// <param name="leftOut">The most that the gap left out may be.</param>
    /// <param name="least">Bodies with smaller gaps are not in the set.</param>
    private Bound For(int leftOut, int least)
    {
        long most = width + leftOut;
        return new([.. ways.Select(Weight)], most - (supply.Length == 0 ? 0 : Weight(supply)));

        long Weight(Stance[] some) => some.Select(way => !gaps.TryGetValue(way, out var gap) ? 0 : gap < least ? most + 1 : way.Pose.Width + gap).DefaultIfEmpty(0).Min();
    }

    private static Dictionary<Stance, int> LeastGaps(Stance[] row, Following following)
    {
        var found = new Dictionary<Stance, int>();
        foreach (var one in row)
        {
            var (right, left) = (int.MaxValue, int.MaxValue);
            foreach (var other in row)
            {
                if (right > 0 && AtLeast(one, other) < right)
                    right = Math.Min(right, following.Least(one, other) - one.Pose.Width);
                if (left > 0 && AtLeast(other, one) < left)
                    left = Math.Min(left, following.Least(other, one) - other.Pose.Width);
                if (right == 0 || left == 0)
                    break;
            }

            found[one] = Math.Min(right, left);
        }

        return found;
    }

    /// <summary>What is seen at a glance: plugs that, wherever the two stand, are level with the other's body.</summary>
    private static int AtLeast(Stance left, Stance right)
    {
        var gap = 0;
        foreach (var plug in left.RightSide)
            gap = IsAlwaysLevel(left, plug, right) ? Math.Max(gap, plug.Right - left.Pose.Width) : gap;
        foreach (var plug in right.LeftSide)
            gap = IsAlwaysLevel(right, plug, left) ? Math.Max(gap, -plug.X) : gap;
        return gap;
    }

    private static bool IsAlwaysLevel(Stance owner, Box plug, Stance other) => owner.LastY + plug.Y < other.CoreTo && owner.FirstY + plug.Rear > other.CoreFrom;
}
