using GigRig.Planning.Fitting;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Bodies too deep to stand behind one another stand in one row. Those that stand otherwise, even if they are rather deep, are left out, as next to them hardly any gap
/// is needed. Cut the row at any one of them: whatever stands left of it keeps its least gap to the right, whatever
/// stands right of it its least gap to the left. So the widths, and for all but one of them the lesser of its two least gaps, add up to no more than the board's width.
/// </summary>
internal sealed class RowBounds
{
    private readonly WaysToStand ways;
    private readonly int width;
    private readonly Following following;
    private readonly Dictionary<Stance, int> gaps;
    private readonly int most;

    /// <summary>The largest of the gaps that are no more than half the largest; the largest where there is none.</summary>
    private readonly int small;

    public RowBounds(WaysToStand ways, int width, Following following)
    {
        (this.ways, this.width, this.following) = (ways, width, following);
        gaps = LeastGaps([.. ways.InRow.SelectMany(some => some).Concat(ways.Supply.Where(ways.IsDeep)).Distinct()]);
        most = gaps.Values.DefaultIfEmpty(0).Max();
        small = gaps.Values.Where(gap => 2 * gap <= most).DefaultIfEmpty(most).Max();
    }

    /// <summary>
    /// Bounds one of which every set keeps: that of sets with a body whose gap is small, which is the one left out, and that of sets with no such body.
    /// None where nothing stands in a row.
    /// </summary>
    public Bound[] For(Posture[] postures)
    {
        return gaps.Count == 0 ? [] : small == most ? [Row(most, 0)] : [Row(small, 0), Row(most, small + 1)];

        // Bodies with smaller gaps than the least are not in the set.
        Bound Row(long leftOut, int least) => ways.Bound(width + leftOut, postures, way => !gaps.TryGetValue(way, out var gap) ? 0 : gap < least ? width + leftOut + 1 : way.Pose.Width + gap);
    }

    /// <summary>
    /// For a thing that stands otherwise: what can stand neither behind nor in front of it stands in one row with it. The two next to it may keep less than their least
    /// gaps to it.
    /// </summary>
    public Bound Beside(int thing, Posture[] postures)
    {
        var some = ways.Of(thing, Posture.Otherwise).ToArray();
        var row = gaps.Where(one => some.All(s => following.AreSideBySide(one.Key, s))).Select(one => one.Key).ToHashSet(ReferenceEqualityComparer.Instance);
        var loss = row.Cast<Stance>().Select(LossBeside).DefaultIfEmpty(0).Max();
        return ways.Bound(width - some.Min(s => s.Pose.Width) + (2L * loss), postures, way => row.Contains(way) ? way.Pose.Width + gaps[way] : 0);

        int LossBeside(Stance deep) => gaps[deep] - some.Min(s => Math.Min(Math.Min(following.Least(deep, s) - deep.Pose.Width, following.Least(s, deep) - s.Pose.Width), gaps[deep]));
    }

    private Dictionary<Stance, int> LeastGaps(Stance[] row)
    {
        var found = new Dictionary<Stance, int>();
        foreach (var one in row)
        {
            var (right, left) = (int.MaxValue, int.MaxValue);
            foreach (var other in row)
            {
                if (Math.Min(right, left) == 0)
                    break;
                if (AtLeast(one, other) < right)
                    right = Math.Min(right, following.Least(one, other) - one.Pose.Width);
                if (AtLeast(other, one) < left)
                    left = Math.Min(left, following.Least(other, one) - other.Pose.Width);
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
