using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Web.Drawing;

/// <summary>Patch leads between neighbours of the audio order. Each leaves its plug straight out and bends towards the other.</summary>
internal static class PatchLeadCurves
{
    private const double LeastPull = 12;
    private const double MostPull = 40;

    public static IEnumerable<SceneLead> Of(RigProblem problem, Rig rig)
    {
        var jacks = new JackSpots(problem, rig);
        return Along(ChainPart.Front, rig.Chain.Front).Concat(Along(ChainPart.Loop, rig.Chain.Loop));

        IEnumerable<SceneLead> Along(ChainPart part, ValueList<GearId> order)
        {
            var stops = order.Where(jacks.Stands).ToList();
            return stops.Zip(stops.Skip(1), (from, to) => Between(part, from, jacks.Of(from, JackUse.Out), to, jacks.Of(to, JackUse.In)));
        }
    }

    private static SceneLead Between(ChainPart part, GearId fromId, JackSpot from, GearId toId, JackSpot to)
    {
        var distance = Math.Sqrt(Math.Pow(from.Tip.X - to.Tip.X, 2) + Math.Pow(from.Tip.Y - to.Tip.Y, 2));
        var pull = Math.Clamp(distance / 3, LeastPull, MostPull);
        return new(part, fromId, toId, from.Tip, from.Outward(pull), to.Outward(pull), to.Tip);
    }
}

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
