using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Drawing;

/// <summary>Marks the jacks that the long leads go to.</summary>
internal static class ChainEnds
{
    private const double StandsOff = 10;

    public static IEnumerable<SceneTag> Of(RigProblem problem, Rig rig)
    {
        var jacks = new JackSpots(problem, rig);
        return Ends(rig.Chain.Front, "IN", "OUT").Concat(Ends(rig.Chain.Loop, "SEND", "RETURN"));

        IEnumerable<SceneTag> Ends(ValueList<GearId> part, string first, string last)
        {
            var stops = part.Where(jacks.Stands).ToList();
            if (stops.Count == 0)
                yield break;
            yield return new(first, jacks.Of(stops[0], JackUse.In).Outward(StandsOff));
            yield return new(last, jacks.Of(stops[^1], JackUse.Out).Outward(StandsOff));
        }
    }
}
