using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Workbench;

/// <summary>
/// Finds where one more device can stand among those that stand already. Looks only where it would touch something, since a thing that fits anywhere can be
/// pushed to the left and to the front until it does; between rails, where it cannot be pushed freely, it looks at every millimetre of depth.
/// </summary>
/// <remarks>
/// Not the planner's search for spots: that one knows things only as they are allowed to stand, while a bench may hold a supply that has no place yet, or a device that
/// stands turned as its owner forbade since; and it looks where leads run straight, while here the first place from the front left is wanted.
/// </remarks>
internal static class FreePlaces
{
    private static readonly IRule Rails = RuleBook.Rules.Single(rule => rule.Id == RuleIds.Rails);
    private static readonly IRule SwitchSpacing = RuleBook.Rules.Single(rule => rule.Id == RuleIds.SwitchSpacing);

    /// <summary>The first place from the front left at which no rule of standing speaks against it; null where there is none.</summary>
    public static Placement? First(RigProblem problem, Rig rig, Device device)
    {
        var board = problem.Board;
        var others = PartsOf(problem, rig).Concat(board.KeepOuts).ToList();
        var reach = board.PlugSpace;
        var outline = Outline.Of(device, problem.Options.Plugs);
        return (
            from turn in device.Turns
            let own = Parts(outline, new(device.Id, default, turn))
            from y in Starts(own, others, board.Surface.Y, reach.Y, part => (part.Y, part.Rear)).Concat(EveryDepth(board)).Distinct()
            where Rails.Check(problem, Rig.Empty with { Placements = [new(device.Id, new(default, y), turn)] }).ToList() is []
            from x in Starts(own, others, board.Surface.X, reach.X, part => (part.X, part.Right))
            let at = new Point(x, y)
            where board.Surface.Contains(own[0].MovedBy(at))
                && own.Skip(1).All(plug => reach.Contains(plug.MovedBy(at)))
                && !own.Any(part => others.Exists(part.MovedBy(at).Overlaps))
            orderby y, x
            select new Placement(device.Id, at, turn))
            .FirstOrDefault(place => KeepsSwitchesApart(problem, rig, place));
    }

    private static bool KeepsSwitchesApart(RigProblem problem, Rig rig, Placement place) =>
        !SwitchSpacing.Check(problem, rig with { Placements = [.. rig.Placements, place] }).Any(fault => fault.Culprits.Contains(place.Id));

    private static IEnumerable<Millimetres> EveryDepth(Board board) =>
        board.Rails.Count == 0 ? [] : Enumerable.Range(0, board.Depth.Value).Select(Millimetres.From);

    /// <summary>Where a thing starts so that one of its parts begins at the edge of the board, or where another part ends.</summary>
    private static IEnumerable<Millimetres> Starts(List<Rect> own, List<Rect> others, Millimetres bodyFrom, Millimetres plugsFrom, Func<Rect, (Millimetres From, Millimetres To)> span) =>
        own.SelectMany(part => others.Select(other => span(other).To - span(part).From))
            .Concat(own.Skip(1).Select(plug => plugsFrom - span(plug).From))
            .Append(bodyFrom - span(own[0]).From)
            .Distinct();

    /// <summary>The body first, then its plugs.</summary>
    private static List<Rect> Parts(Outline outline, Placement placement)
    {
        var (body, plugs) = outline.Placed(placement);
        return [body, .. plugs];
    }

    private static IEnumerable<Rect> PartsOf(RigProblem problem, Rig rig)
    {
        foreach (var placement in rig.Placements)
            if (problem.FindDevice(placement.Id) is { } device)
                foreach (var part in Parts(Outline.Of(device, problem.Options.Plugs), placement))
                    yield return part;
        if (rig.Supply is { } at && problem.Supply is { Mount: SupplyMount.Top, Size: { } size })
            yield return Outline.Of(size).BodyAt(at);
    }
}
