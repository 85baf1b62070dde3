using GigRig.Planning.Fitting;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Above every point along the board stand no more bodies, one behind the other, than its depth holds. A body's width counts by how many of the shallowest bodies it keeps
/// away there: a dual feasible function of its depth (Carlier, Clautiaux and Moukrim 2007); in full where nothing at all can stand behind or in front of it, plugs and all.
/// </summary>
internal sealed class ColumnBounds
{
    private readonly WaysToStand ways;
    private readonly Surface surface;
    private readonly Following following;
    private readonly int shallowest;
    private readonly int most;

    public ColumnBounds(WaysToStand ways, Surface surface, Following following)
    {
        (this.ways, this.surface, this.following) = (ways, surface, following);
        shallowest = ways.All.Select(s => s.Pose.Depth).DefaultIfEmpty(surface.Depth).Min();
        most = surface.Depth / shallowest;
    }

    public Bound For(Posture[] postures)
    {
        var shallow = Enumerable.Range(0, ways.Things).SelectMany(thing => ways.Of(thing, postures[thing] & Posture.Otherwise)).Concat(ways.Supply).Where(way => !ways.IsDeep(way)).Distinct().ToArray();
        return ways.Bound((long)most * surface.Width, postures, way => (long)LayersOf(way, shallow) * way.Pose.Width);
    }

    private int LayersOf(Stance way, Stance[] shallow)
    {
        if (!ways.IsDeep(way))
            return way.Pose.Depth / shallowest;
        var beside = (surface.Depth - way.Pose.Depth) / shallowest;
        return beside == 0 || shallow.All(s => following.AreSideBySide(s, way)) ? most : most - beside;
    }
}
