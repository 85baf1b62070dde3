namespace GigRig.Planning.Fitting;

/// <summary>Things being stood on a surface one by one, with every piece they take.</summary>
internal sealed class Layout(Surface surface, IReadOnlyList<Shape> shapes)
{
    private readonly List<Standing> standings = [];
    private readonly List<Box> pieces = [.. surface.KeepOuts];
    private readonly List<(int X, int Y)> switches = [];

    public IReadOnlyList<Standing> Standings => standings;

    /// <summary>Keep-outs first, then the pieces of each standing thing.</summary>
    public List<Box> Pieces => pieces;

    /// <summary>Empty where no spacing of switches is asked for.</summary>
    public IReadOnlyList<(int X, int Y)> Switches => switches;

    public bool Admits(Pose pose, int x, int y)
    {
        if (pose.Spot is { } spot && spot != (x, y))
            return false;
        if (x < 0 || y < 0 || x + pose.Width > surface.Width || y + pose.Depth > surface.Depth || !surface.Bears(y, pose.Depth))
            return false;
        foreach (var piece in pose.Pieces)
        {
            var moved = piece.MovedBy(x, y);
            if (!surface.PlugSpace.Contains(moved))
                return false;
            foreach (var taken in pieces)
            {
                if (moved.Overlaps(taken))
                    return false;
            }
        }

        return SwitchesAdmit(pose, x, y);
    }

    public void Stand(int item, int pose, int x, int y)
    {
        standings.Add(new(item, pose, x, y));
        var stood = shapes[item].Poses[pose];
        foreach (var piece in stood.Pieces)
            pieces.Add(piece.MovedBy(x, y));
        if (surface.SwitchSpacing > 0)
        {
            foreach (var (sx, sy) in stood.Switches)
                switches.Add((x + sx, y + sy));
        }
    }

    private bool SwitchesAdmit(Pose pose, int x, int y)
    {
        if (surface.SwitchSpacing == 0)
            return true;
        var least = surface.SwitchSpacing * surface.SwitchSpacing;
        return !pose.Switches.Any(s => switches.Any(t => Squared(x + s.X - t.X) + Squared(y + s.Y - t.Y) < least));
    }

    private static int Squared(int value) => value * value;
}
