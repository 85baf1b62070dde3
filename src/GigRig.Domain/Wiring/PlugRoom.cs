using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;

namespace GigRig.Domain.Wiring;

/// <summary>
/// Which plugs fit at the jacks of a rig. Every plug fits that stands out no further than the room reserved for plugs; a longer one fits where nothing else stands
/// and, on a lead that stays on the board, where the board lets it stick out so far.
/// </summary>
internal sealed class PlugRoom
{
    private readonly RigProblem problem;
    private readonly Dictionary<GearId, Placement> placed;
    private readonly IReadOnlyList<StandingThing> things;

    public PlugRoom(RigProblem problem, Rig rig)
    {
        this.problem = problem;
        placed = rig.Placements.DistinctBy(placement => placement.Id).ToDictionary(placement => placement.Id);
        things = StandingThing.On(problem, rig);
    }

    /// <summary>Away from the board, on top of a body and where nothing is said about jacks, every plug fits.</summary>
    public bool Fits(PlugShape shape, HopEnd end, bool staysOnBoard)
    {
        var usual = problem.Options.Plugs.Audio;
        if (PlugSizes.LeastOut(shape) <= usual.Out || end.Thing != HopThing.Device || problem.FindDevice(end.Id!.Value) is not { } device || !placed.TryGetValue(device.Id, out var placement))
            return true;
        if (device.Jacks.Where(jack => jack.Use == end.Jack).Skip(end.Number).FirstOrDefault() is not { Side: not Side.Top } jack)
            return true;
        var plugs = problem.Options.Plugs with { Audio = usual with { Out = PlugSizes.LeastOut(shape) } };
        var taken = Outline.Of(device with { Jacks = [jack] }, plugs).Placed(placement).Plugs;
        return taken.All(room => (!staysOnBoard || problem.Board.PlugSpace.Contains(room)) && !things.Any(thing => thing.Id != device.Id && thing.Parts.Any(room.Overlaps)));
    }
}
