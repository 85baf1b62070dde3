using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.Web.Sheets;

namespace GigRig.Web.Drawing;

/// <summary>Patch leads as they run around the bodies. Neighbours keep off them by different margins, so that leads which share a way can be told apart.</summary>
internal static class LeadLines
{
    private const int Lanes = 3;
    private const int FirstMargin = 3;
    private const int LaneWidth = 3;

    public static IEnumerable<SceneLead> Of(RigProblem problem, Rig rig)
    {
        var routes = new LeadRoutes(problem, rig);
        var loop = rig.Chain.Loop.ToHashSet();
        foreach (var (index, hop) in Hops.Of(problem, rig).Where(hop => hop.Kind == HopKind.Patch).Index())
        {
            var route = routes.Beside(hop, (FirstMargin + (index % Lanes * LaneWidth)).Mm)!;
            yield return new(
                loop.Contains(hop.From.Id!.Value) ? ChainPart.Loop : ChainPart.Front,
                LeadMarks.Of(index),
                hop.From.Id.Value,
                hop.To.Id!.Value,
                route.Corners.Select(corner => SceneSpot.Of(corner, problem.Board.Depth)).ToValueList());
        }
    }
}
