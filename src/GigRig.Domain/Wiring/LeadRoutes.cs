using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;

namespace GigRig.Domain.Wiring;

/// <summary>
/// The ways that leads on the board take: shortest around all bodies, by right angles, with the fewest corners among the shortest. A lead has no thickness here, so it
/// may pass where two bodies touch; bend and slack make up for what it really has.
/// </summary>
public sealed class LeadRoutes
{
    private readonly RigProblem problem;
    private readonly Dictionary<GearId, Placement> placed;
    private readonly List<Rect> bodies;

    public LeadRoutes(RigProblem problem, Rig rig)
    {
        this.problem = problem;
        placed = rig.Placements.DistinctBy(placement => placement.Id).ToDictionary(placement => placement.Id);
        bodies = [.. StandingThing.On(problem, rig).Select(thing => thing.Body)];
    }

    /// <summary>Null for a hop that leaves the board.</summary>
    public LeadRoute? Of(Hop hop) => hop.Kind == HopKind.Patch ? RouteSearch.Between(TipOf(hop.From), TipOf(hop.To), bodies) : null;

    /// <summary>Where the lead leaves the plug; the middle of the body where the device has no such jack.</summary>
    private Point TipOf(HopEnd end)
    {
        var (device, placement) = (problem.FindDevice(end.Id!.Value)!, placed[end.Id.Value]);
        var outline = Outline.Of(device, problem.Options.Plugs);
        return outline.PlacedJacks(placement).Where(jack => jack.Jack.Use == end.Jack).Skip(end.Number).FirstOrDefault()?.Tip ?? outline.BodyAt(placement).Middle;
    }
}
