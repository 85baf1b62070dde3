using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Rules.Standing;

internal sealed class RailsRule : IRule
{
    public string Id => RuleIds.Rails;

    public string Sentence => "On a railed board every body bears on the rails firmly enough not to rock.";

    /// <summary>A body bears on a rail with this much of its depth, or with the whole of a narrower rail. Common practice, no source: about what a strip of hook tape needs.</summary>
    private static readonly Millimetres LeastBearing = 10.Mm;

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        if (problem.Board.Rails.Count == 0)
            yield break;
        foreach (var thing in StandingThing.On(problem, rig))
        {
            if (problem.Board.Rails.Any(rail => rail.From <= thing.Body.Y && thing.Body.Rear <= rail.To))
                continue;
            var bearing = problem.Board.Rails.Where(rail => Bears(thing.Body, rail)).ToList();
            if (bearing.Count < 2)
                yield return new(Id, [thing.Id], bearing.Count.Counted("rail"), $"{thing.Name} bears on {bearing.Count.Counted("rail")}; it needs two, or to stand wholly on one.");
            else if (Rocking(thing.Body, bearing) is { Value: > 0 } by)
                yield return new(Id, [thing.Id], $"{by}", $"{thing.Name} would rock: its middle stands {by} outside the rails it bears on.");
        }
    }

    private static bool Bears(Rect body, Rail rail)
    {
        var overlap = Least(body.Rear, rail.To) - Most(body.Y, rail.From);
        return overlap >= Least(LeastBearing, rail.To - rail.From);
    }

    /// <summary>How far the middle of the depth lies outside the bearing span, rounded up; zero where it lies within.</summary>
    private static Millimetres Rocking(Rect body, List<Rail> bearing)
    {
        var twiceMiddle = 2 * body.Y.Value + body.Depth.Value;
        var before = 2 * bearing.Min(rail => rail.From).Value - twiceMiddle;
        var behind = twiceMiddle - 2 * bearing.Max(rail => rail.To).Value;
        return ((Math.Max(0, Math.Max(before, behind)) + 1) / 2).Mm;
    }

    private static Millimetres Least(Millimetres a, Millimetres b) => a < b ? a : b;

    private static Millimetres Most(Millimetres a, Millimetres b) => a > b ? a : b;
}
