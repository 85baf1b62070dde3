namespace GigRig.Planning.Fitting;

/// <summary>A strip filled up to a point: how far right each open thing must start at least, and what still stands beyond.</summary>
internal sealed record StripState(int From, int[] Reach, (int End, int Depth)[] Ends)
{
    public bool IsNoWorseThan(StripState other)
    {
        if (From > other.From)
            return false;
        for (var i = 0; i < Reach.Length; i++)
        {
            if (Reach[i] > other.Reach[i])
                return false;
        }

        // Depth in use falls in steps: it is enough to look where the other goes on from, and just before each of our ends.
        if (DepthAt(other.From) > other.DepthAt(other.From))
            return false;
        foreach (var (end, _) in Ends)
        {
            if (end > other.From && DepthAt(end - 1) > other.DepthAt(end - 1))
                return false;
        }

        return true;
    }

    private int DepthAt(int x)
    {
        var depth = 0;
        foreach (var (end, one) in Ends)
            depth += end > x ? one : 0;
        return depth;
    }
}
