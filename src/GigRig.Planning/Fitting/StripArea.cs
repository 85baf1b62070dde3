namespace GigRig.Planning.Fitting;

/// <summary>
/// What of a strip filled up to a point can still be filled: of the depth that is free above a point, only sums of the depths of what is still open (Herz 1972;
/// Christofides and Whitlock 1977).
/// </summary>
internal sealed class StripArea(Surface surface, Stance[] things)
{
    private readonly Sums depths = new(surface.Depth);
    private readonly List<(int End, int Depth)> ends = [];

    /// <summary>Whether the bodies still open have no more area than can be filled from here on.</summary>
    /// <param name="put">What is put down, each starting no later than <paramref name="from"/>.</param>
    public bool Suffices(int set, int from, List<(int Thing, int X)> put)
    {
        var (used, area) = (0, 0L);
        depths.Clear();
        ends.Clear();
        for (var thing = 0; thing < things.Length; thing++)
        {
            if ((set >> thing & 1) == 1)
                continue;
            area += (long)things[thing].Pose.Width * things[thing].Pose.Depth;
            depths.Add(things[thing].Pose.Depth);
        }

        foreach (var (thing, at) in put)
        {
            if (at + things[thing].Pose.Width <= from)
                continue;
            used += things[thing].Pose.Depth;
            ends.Add((at + things[thing].Pose.Width, things[thing].Pose.Depth));
        }

        ends.Sort();
        long room = 0;
        foreach (var (end, depth) in ends)
        {
            room += (long)(end - from) * depths.UpTo(surface.Depth - used);
            (from, used) = (end, used - depth);
        }

        return area <= room + ((long)(surface.Width - from) * depths.UpTo(surface.Depth));
    }
}
