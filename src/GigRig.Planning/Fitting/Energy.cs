namespace GigRig.Planning.Fitting;

/// <summary>
/// Energetic reasoning (Erschler, Lopez and Thuriot 1991) on body areas: within a strip of the board lies at least so much of every body, wherever in its window
/// it stands. Strips across and along the board are looked at.
/// </summary>
internal sealed class Energy(Surface surface, Stance[] stances)
{
    public bool Suffices(Windows node) =>
        Suffices(node.Left, node.Right, across: true) && Suffices(node.Front, node.Rear, across: false);

    private bool Suffices(int[] least, int[] most, bool across)
    {
        var height = across ? surface.Depth : surface.Width;
        for (var a = 0; a < stances.Length; a++)
        {
            var from = least[a];
            for (var b = 0; b < stances.Length; b++)
            {
                var to = most[b] + Length(b, across);
                if (to <= from)
                    continue;
                long area = 0;
                for (var i = 0; i < stances.Length; i++)
                {
                    var length = Length(i, across);
                    var inside = Math.Min(Math.Min(length, to - from), Math.Min(least[i] + length - from, to - most[i]));
                    if (inside > 0)
                        area += (long)inside * Length(i, !across);
                }

                if (area > (long)height * (to - from))
                    return false;
            }
        }

        return true;
    }

    private int Length(int i, bool across) => across ? stances[i].Pose.Width : stances[i].Pose.Depth;
}
