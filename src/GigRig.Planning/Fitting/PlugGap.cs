namespace GigRig.Planning.Fitting;

/// <summary>The least distance between two bodies that stand side by side, left and right, however they are shifted along each other.</summary>
internal static class PlugGap
{
    public static int Least(Stance left, Stance right)
    {
        var least = int.MaxValue;
        for (var shift = right.FirstY - left.LastY; shift <= right.LastY - left.FirstY && least > 0; shift++)
            least = Math.Min(least, At(left.Pose, right.Pose, shift));
        return least;
    }

    /// <summary>
    /// The pieces of the left thing lie left of those of the right thing where they are level. One exception: plugs at the corners, beyond both bodies, may
    /// have changed over; then the bodies touch.
    /// </summary>
    /// <param name="shift">How much farther back the right body's front edge is.</param>
    private static int At(Pose left, Pose right, int shift)
    {
        var gap = 0;
        var gapUnlessTouching = 0;
        foreach (var piece in left.Pieces)
        {
            foreach (var other in right.Pieces)
            {
                if (piece.Y >= other.Rear + shift || other.Y + shift >= piece.Rear)
                    continue;
                var needed = piece.Right - left.Width - other.X;
                gapUnlessTouching = Math.Max(gapUnlessTouching, needed);
                if (piece.X < left.Width || other.Right > 0)
                    gap = Math.Max(gap, needed);
            }
        }

        return gap == 0 ? 0 : gapUnlessTouching;
    }
}
