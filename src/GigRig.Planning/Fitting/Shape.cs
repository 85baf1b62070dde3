using GigRig.Domain.Geometry;

namespace GigRig.Planning.Fitting;

/// <summary>A thing as it stands when turned one way: its body at (0, 0) first, then the space its plugs take, all pieces disjoint.</summary>
/// <param name="Switches">Centres of its foot switches.</param>
/// <param name="Spot">The only place where its front-left corner may stand; null where it may stand anywhere.</param>
internal sealed record Pose(Turn Turn, Box[] Pieces, (int X, int Y)[] Switches, (int X, int Y)? Spot = null)
{
    public Box Body => Pieces[0];

    /// <summary>Along and across changed over, without switches.</summary>
    public Pose Across() => new(Turn, [.. Pieces.Select(p => p.Across())], [], Spot is var (x, y) ? (y, x) : null);

    public int Width => Body.Width;

    public int Depth => Body.Depth;
}

/// <summary>All the ways a thing may stand. Two things with equal keys can stand in each other's place.</summary>
internal sealed class Shape(Pose[] poses)
{
    public Pose[] Poses { get; } = poses;

    public string Key { get; } = string.Join('|', poses
        .Select(p => string.Join(';', p.Pieces.Select(b => $"{b.X},{b.Y},{b.Width},{b.Depth}")) + "/" + string.Join(';', p.Switches) + $"{p.Spot}")
        .Order(StringComparer.Ordinal));

    /// <summary>Whether it must stand where it was fixed.</summary>
    public bool IsFixed => Poses is [{ Spot: not null }];

    /// <summary>The same thing fixed at a place; the turn must be one of its poses.</summary>
    public Shape At(Turn turn, int x, int y) => new([Poses.First(p => p.Turn == turn) with { Spot = (x, y) }]);

    /// <summary>The pose of this shape that takes the same space as one of an equal shape, whose poses may come in another order.</summary>
    public int PoseLike(Pose other) => Array.FindIndex(Poses, p => p.Pieces.SequenceEqual(other.Pieces) && p.Switches.SequenceEqual(other.Switches) && p.Spot == other.Spot);

    public int BodyArea { get; } = poses[0].Width * poses[0].Depth;
}
