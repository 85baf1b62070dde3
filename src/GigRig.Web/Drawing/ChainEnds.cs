using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Drawing;

/// <summary>Marks the plugs of the long leads. A device without such a jack gets no mark: the audio order says it in words.</summary>
internal static class ChainEnds
{
    public static IEnumerable<SceneTag> Of(RigProblem problem, Rig rig)
    {
        var jacks = new JackSpots(problem, rig);
        return Ends(rig.Chain.Front, "IN", "OUT").Concat(Ends(rig.Chain.Loop, "SND", "RTN"));

        IEnumerable<SceneTag> Ends(ValueList<GearId> part, string first, string last)
        {
            var stops = part.Where(jacks.Stands).ToList();
            if (stops.Count == 0)
                yield break;
            foreach (var (word, jack) in new[] { (first, jacks.Of(stops[0], JackUse.In)), (last, jacks.Of(stops[^1], JackUse.Out)) })
                if (jack.StandsOut > 0)
                    yield return new(word, jack.Outward(-jack.StandsOut / 2));
        }
    }
}
