namespace GigRig.Planning.Fitting;

/// <summary>Says when one shape is at least as big as another: wherever the first stands, the second could stand in its place.</summary>
internal sealed class ShapeOrder(Surface surface)
{
    private readonly Dictionary<(string Big, string Small), bool> known = [];

    public bool IsAtLeastAsBig(Shape big, Shape small)
    {
        if (big.Key == small.Key)
            return true;

        // On rails a smaller body may find no footing where a larger one does, switches are points, not areas, and what is fixed stands in nobody's place.
        if (!surface.IsPlain || surface.SwitchSpacing > 0 || small.IsFixed)
            return false;
        if (!known.TryGetValue((big.Key, small.Key), out var answer))
            known[(big.Key, small.Key)] = answer = big.Poses.All(b => small.Poses.Any(s => Holds(b, s)));
        return answer;
    }

    private static bool Holds(Pose big, Pose small) =>
        small.Width <= big.Width && small.Depth <= big.Depth && Offsets(big, small).Any(o => small.Pieces.All(p => IsWithin(p.MovedBy(o.X, o.Y), big)));

    private static bool IsWithin(Box piece, Pose big)
    {
        IEnumerable<Box> rest = [piece];
        foreach (var held in big.Pieces)
            rest = rest.SelectMany(r => r.Without(held)).Where(r => !r.IsEmpty).ToArray();
        return !rest.Any();
    }

    /// <summary>Where the smaller body may lie within the larger: against its sides, or with some pair of plugs level.</summary>
    private static IEnumerable<(int X, int Y)> Offsets(Pose big, Pose small)
    {
        var xs = Along(big.Width - small.Width, big, small, b => b.X);
        var ys = Along(big.Depth - small.Depth, big, small, b => b.Y);
        return xs.SelectMany(_ => ys, (x, y) => (x, y));
    }

    private static int[] Along(int room, Pose big, Pose small, Func<Box, int> start) =>
    [
        .. big.Pieces.Skip(1).SelectMany(_ => small.Pieces.Skip(1), (b, s) => start(b) - start(s)).Concat([0, room]).Where(o => o >= 0 && o <= room).Distinct(),
    ];
}
