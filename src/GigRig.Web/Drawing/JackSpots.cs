using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Drawing;

/// <summary>Where a lead leaves a jack and which way it points.</summary>
/// <param name="AcrossX">−1 to the left, 1 to the right, 0 neither.</param>
/// <param name="DownY">−1 away from the player, 1 towards them, 0 neither.</param>
/// <param name="StandsOut">How far the plug stands out of the body; zero for a top jack or no jack.</param>
internal readonly record struct JackSpot(SceneSpot Tip, int AcrossX, int DownY, double StandsOut)
{
    public SceneSpot Outward(double by) => new(Tip.X + (AcrossX * by), Tip.Y + (DownY * by));
}

/// <summary>Finds the first jack of a use on a placed device; the middle of the body where it has none.</summary>
internal sealed class JackSpots(RigProblem problem, Rig rig)
{
    private readonly Dictionary<GearId, Placement> placed = rig.Placements.DistinctBy(placement => placement.Id).ToDictionary(placement => placement.Id);

    public bool Stands(GearId id) => placed.ContainsKey(id) && problem.FindDevice(id) is not null;

    public JackSpot Of(GearId id, JackUse use)
    {
        var outline = Outline.Of(problem.FindDevice(id)!, problem.Options.Plugs);
        var placement = placed[id];
        if (outline.PlacedJacks(placement).FirstOrDefault(jack => jack.Jack.Use == use) is not { } found)
            return new(SceneArea.Of(outline.BodyAt(placement), problem.Board.Depth).Centre, 0, 0, 0);
        var (x, y) = Facing(found.Jack.Side, placement.Turn);
        return new(SceneSpot.Of(found.Tip, problem.Board.Depth), x, y, (x, y) == (0, 0) ? 0 : problem.Options.Plugs.Audio.Out.Value);
    }

    /// <summary>The way a side of the unturned body faces in the picture once the body is turned.</summary>
    private static (int AcrossX, int DownY) Facing(Side side, Turn turn)
    {
        var (x, y) = side switch
        {
            Side.Left => (-1, 0),
            Side.Right => (1, 0),
            Side.Rear => (0, -1),
            Side.Front => (0, 1),
            _ => (0, 0),
        };
        for (var quarters = (int)turn / 90; quarters > 0; quarters--)
            (x, y) = (-y, x);
        return (x, y);
    }
}
