namespace GigRig.Planning.Fitting;

/// <summary>
/// How much farther right one thing must start at least than another that starts no farther right than it: nothing where they can lie behind one another with all their plugs,
/// else the width and the gap, or whatever lies between.
/// </summary>
internal sealed class Following
{
    private readonly Dictionary<(Stance First, Stance Second), int> known = [];

    public int Least(Stance first, Stance second)
    {
        if (!known.TryGetValue((first, second), out var least))
            known[(first, second)] = least = Find(first, second);
        return least;
    }

    /// <summary>Whether nowhere along the board there can be both of these bodies, one behind the other.</summary>
    public bool AreSideBySide(Stance one, Stance other) => Least(one, other) >= one.Pose.Width && Least(other, one) >= other.Pose.Width;

    private static int Find(Stance first, Stance second)
    {
        var (nearest, farthest) = (second.FirstY - first.LastY, second.LastY - first.FirstY);

        // Bodies that are level wherever they stand, and so they mostly are, stand side by side.
        var areLevel = farthest < first.Pose.Depth && nearest > -second.Pose.Depth;
        for (var along = areLevel ? first.Pose.Width : 0; ;)
        {
            // Whatever shift is barred by one pair of pieces is stepped over, until none bars it. All these pairs bar the same shifts until one of them is passed.
            var (shift, passed) = (nearest, int.MaxValue);
            for (var moved = true; moved && shift <= farthest;)
            {
                moved = false;
                foreach (var piece in first.Pose.Pieces)
                {
                    foreach (var other in second.Pose.Pieces)
                    {
                        if (piece.X >= other.Right + along || other.X + along >= piece.Right || piece.Y >= other.Rear + shift || other.Y + shift >= piece.Rear)
                            continue;
                        shift = piece.Rear - other.Y;
                        passed = Math.Min(passed, piece.Right - other.X);
                        moved = true;
                    }
                }
            }

            if (shift <= farthest)
                return along;
            along = passed;
        }
    }
}
