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

    /// <summary>The same way kept off the bodies by a margin, to be drawn; the way itself where the margin would lead it a long way round.</summary>
    public LeadRoute? Beside(Hop hop, Millimetres margin)
    {
        if (Of(hop) is not { } way)
            return null;
        var (from, to) = (way.Corners[0], way.Corners[^1]);
        var grown = RouteSearch.Between(from, to, bodies.Select(body => Grown(body, margin) is var around && (RouteSearch.Within(around, from) || RouteSearch.Within(around, to)) ? body : around));
        return grown.Length <= way.Length + (8 * margin.Value).Mm ? grown : way;
    }

    private static Rect Grown(Rect body, Millimetres by) => new(body.X - by, body.Y - by, body.Width + by + by, body.Depth + by + by);

    /// <summary>Where the lead leaves the plug; the middle of the body where the device has no such jack.</summary>
    private Point TipOf(HopEnd end)
    {
        var (device, placement) = (problem.FindDevice(end.Id!.Value)!, placed[end.Id.Value]);
        var outline = Outline.Of(device, problem.Options.Plugs);
        return outline.PlacedJacks(placement).Where(jack => jack.Jack.Use == end.Jack).Skip(end.Number).FirstOrDefault()?.Tip ?? outline.BodyAt(placement).Middle;
    }
}
