using GigRig.Planning.Fitting;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Bodies too deep to stand behind one another stand in one row. Cut the row at any one of them: whatever stands left of it keeps its least gap to the right, whatever
/// stands right of it its least gap to the left. So the widths, and for all but one of them the lesser of its two least gaps, add up to no more than the board's width.
/// What stands otherwise, but still neither behind nor in front of any of them, takes its width of the row too, less what the one next to it may lose of its gap; where several
/// such may lie behind one another, the same part of that each. So does a body of the row, without a gap of its own, that would take many others theirs: one whose plugs pass
/// some others, or theirs pass it. A few such would make all gaps small; so it is decided first whether they are in the set.
/// </summary>
internal sealed class RowBounds
{
    /// <summary>With more lenient bodies than this there are too many sets of them to look at.</summary>
    private const int MostLenient = 8;

    private readonly WaysToStand ways;
    private readonly Surface surface;
    private readonly Following following;
    private readonly Dictionary<Stance, int> gaps;
    private readonly Dictionary<Stance, int> losses = [];
    private readonly Dictionary<(int Thing, Posture Posture), Row> besides = [];
    private readonly Row all;
    private readonly HashSet<Stance> lenient;
    private readonly int most;

    /// <summary>The largest of the gaps that are no more than half the largest; the largest where there is none.</summary>
    private readonly int small;

    public RowBounds(WaysToStand ways, Surface surface, Following following)
    {
        (this.ways, this.surface, this.following) = (ways, surface, following);
        Stance[] row = [.. Enumerable.Range(0, ways.Things).SelectMany(thing => ways.Of(thing, Posture.InRow)).Concat(ways.Supply.Where(ways.IsDeep)).Distinct()];
        lenient = FindLenient(row);
        Lenient = [.. Enumerable.Range(0, ways.Things).Where(thing => ways.Of(thing, Posture.InRow).Any(lenient.Contains))];
        gaps = LeastGaps([.. row.Where(way => !lenient.Contains(way))]);
        most = gaps.Values.DefaultIfEmpty(0).Max();
        small = gaps.Values.Where(gap => 2 * gap <= most).DefaultIfEmpty(most).Max();
        all = new(this, [.. gaps.Keys], []);
    }

    /// <summary>Things that stand in the row and would take many others their gaps.</summary>
    public int[] Lenient { get; }

    /// <summary>
    /// Bounds one of which every set keeps: that of sets with a body whose gap is small, which is the one left out, and that of sets with no such body.
    /// None where nothing stands in a row.
    /// </summary>
    public Bound[] For(Posture[] postures) => gaps.Count == 0 ? [] : BoundsOf(all, postures);

    /// <summary>The same for a thing that stands otherwise and what can stand neither behind nor in front of it.</summary>
    public Bound[] Beside(int thing, Posture[] postures)
    {
        if (!besides.TryGetValue((thing, postures[thing]), out var row))
        {
            var some = ways.Of(thing, postures[thing]).ToArray();
            besides[(thing, postures[thing])] = row = new(this, [.. gaps.Keys.Where(deep => some.All(s => following.AreSideBySide(deep, s)))], some);
        }

        return BoundsOf(row, postures);
    }

    private Bound[] BoundsOf(Row row, Posture[] postures)
    {
        var others = Enumerable.Range(0, ways.Things)
            .SelectMany(thing => ways.Of(thing, postures[thing]).Where(way => !gaps.ContainsKey(way) && row.IsBeside(way)).Select(way => (Thing: thing, Way: way))).ToArray();
        var stacked = others.Where(one => others.Any(other => other.Thing != one.Thing && !following.AreSideBySide(one.Way, other.Way))).ToArray();
        var layers = stacked.Length == 0 ? 1 : surface.Depth / stacked.Min(one => one.Way.Pose.Depth);
        var stackedLoss = stacked.Select(one => LossBeside(one.Way)).DefaultIfEmpty(0).Max();
        var taken = others.Select(one => one.Way).Distinct().ToDictionary(way => way, way => way.Pose.Width - LossBeside(way));
        foreach (var (_, way) in stacked)
            taken[way] = (way.Pose.Width - stackedLoss) / layers;

        // Cut at one that stands otherwise, that may lose at both sides; all else keeps its gap.
        var cutThere = others.Where(one => (postures[one.Thing] & Posture.InRow) == 0 && !Lenient.Contains(one.Thing) && !stacked.Contains(one)).GroupBy(one => one.Thing)
            .Where(some => some.Count() == ways.Of(some.Key, postures[some.Key]).Count()).Select(some => some.Max(one => LossBeside(one.Way))).DefaultIfEmpty(most).Min();
        return cutThere <= small ? [Of(cutThere, 0)] : small == most ? [Of(most, 0)] : [Of(small, 0), Of(Math.Min(cutThere, most), small + 1)];

        // Bodies with smaller gaps than the least are not in the set.
        Bound Of(long leftOut, int least) => ways.Bound(surface.Width + leftOut, postures, way =>
            row.Deep.Contains(way) ? gaps[way] < least ? surface.Width + leftOut + 1 : way.Pose.Width + gaps[way] : Math.Max(0, taken.GetValueOrDefault(way)));
    }

    /// <summary>How much of its gap a body of the row may lose at most that stands next to this.</summary>
    private int LossBeside(Stance way)
    {
        if (!losses.TryGetValue(way, out var loss))
            losses[way] = loss = gaps.Where(one => following.AreSideBySide(one.Key, way)).Select(one => one.Value - GapBetween(one.Key, way, one.Value)).DefaultIfEmpty(0).Max();
        return loss;
    }

    private int GapBetween(Stance deep, Stance way, int atMost) =>
        Math.Min(atMost, Math.Min(following.Least(deep, way) - deep.Pose.Width, following.Least(way, deep) - way.Pose.Width));

    /// <summary>
    /// Bodies are plain whose own plugs, on one side at least, keep few others away. Between any two that are not both plain there is a gap, but for a few: as few bodies as may be that
    /// have a part in all these pairs are lenient. None where that would be many.
    /// </summary>
    private HashSet<Stance> FindLenient(Stance[] row)
    {
        var usual = 0;
        foreach (var one in row)
        {
            foreach (var other in row)
                usual = Math.Max(usual, AtLeast(one, other));
        }

        bool[] plain = [.. row.Select(one => KeepsFewAway(one, row, usual, isRight: true) || KeepsFewAway(one, row, usual, isRight: false))];
        var pairs = new List<(int One, int Other)>();
        for (var i = 0; i < row.Length; i++)
        {
            for (var j = 0; j < row.Length; j++)
            {
                if (i != j && !(plain[i] && plain[j]) && 2 * AtLeast(row[i], row[j]) <= usual && 2 * (following.Least(row[i], row[j]) - row[i].Pose.Width) <= usual)
                    pairs.Add((i, j));
            }
        }

        var found = new HashSet<Stance>();
        while (pairs.Count > 0 && found.Count < MostLenient)
        {
            var most = pairs.SelectMany(pair => new[] { pair.One, pair.Other }).Where(i => !ways.Supply.Contains(row[i])).GroupBy(i => i).MaxBy(some => some.Count());
            if (most is null)
                break;
            found.Add(row[most.Key]);
            pairs.RemoveAll(pair => pair.One == most.Key || pair.Other == most.Key);
        }

        return pairs.Count > 0 ? [] : found;
    }

    private static bool KeepsFewAway(Stance one, Stance[] row, int usual, bool isRight)
    {
        var few = 0;
        foreach (var other in row)
            few += 2 * OwnGap(one, other, isRight) <= usual ? 1 : 0;

        return 2 * few > row.Length;
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
    private static int AtLeast(Stance left, Stance right) => Math.Max(OwnGap(left, right, isRight: true), OwnGap(right, left, isRight: false));

    /// <summary>What the plugs on one side of a body alone keep another away there.</summary>
    private static int OwnGap(Stance owner, Stance other, bool isRight)
    {
        var gap = 0;
        foreach (var plug in isRight ? owner.RightSide : owner.LeftSide)
            gap = IsAlwaysLevel(owner, plug, other) ? Math.Max(gap, isRight ? plug.Right - owner.Pose.Width : -plug.X) : gap;
        return gap;
    }

    private static bool IsAlwaysLevel(Stance owner, Box plug, Stance other) => owner.LastY + plug.Y < other.CoreTo && owner.FirstY + plug.Rear > other.CoreFrom;

    /// <summary>Some bodies of the row, and the ways of a thing that can stand neither behind nor in front of any of them.</summary>
    private sealed class Row(RowBounds bounds, Stance[] deep, Stance[] thing)
    {
        private readonly Dictionary<Stance, bool> known = thing.ToDictionary(way => way, _ => true);

        public HashSet<Stance> Deep { get; } = [.. deep];

        /// <summary>Whether this can stand neither behind nor in front of any of all these.</summary>
        public bool IsBeside(Stance way)
        {
            if (!known.TryGetValue(way, out var isBeside))
                known[way] = isBeside = thing.Concat(deep).All(one => bounds.following.AreSideBySide(one, way));
            return isBeside;
        }
    }
}
