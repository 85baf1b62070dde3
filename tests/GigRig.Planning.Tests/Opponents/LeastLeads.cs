using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>The least patch lead with which the things of a rig can stand, by trying every place of every thing; turns back only where the leads so far are no shorter.</summary>
internal sealed class LeastLeads(RigProblem problem)
{
    private readonly EveryStanding standings = new(problem);

    public int Of(Rig rig)
    {
        var order = rig.Chain.Front.Concat(rig.Chain.Loop).Concat(rig.Placements.Select(p => p.Id)).Distinct().ToList();
        var places = order.Select(id => standings.Of(id).Select(place => (place, Tip(place, JackUse.In), Tip(place, JackUse.Out))).ToList()).ToList();
        if (standings.OfSupply is { } supply)
            places.Add([.. supply.Select(place => (place, default(Point), default(Point)))]);
        var starts = new HashSet<GearId>(rig.Chain.Front.Take(1).Concat(rig.Chain.Loop.Take(1)).Concat(rig.Placements.Select(p => p.Id).Where(id => !rig.Chain.Front.Contains(id) && !rig.Chain.Loop.Contains(id))));
        var best = int.MaxValue;
        Stand(0, 0, [], default);
        return best;

        void Stand(int next, int leads, List<OneStanding> stood, Point from)
        {
            if (leads >= best)
                return;
            if (next == places.Count)
            {
                best = leads;
                return;
            }

            var begins = next >= order.Count || starts.Contains(order[next]);
            foreach (var (place, @in, @out) in places[next])
            {
                if (!stood.All(other => standings.AreApart(place, other)))
                    continue;
                stood.Add(place);
                Stand(next + 1, leads + (begins ? 0 : Math.Abs(@in.X.Value - from.X.Value) + Math.Abs(@in.Y.Value - from.Y.Value)), stood, @out);
                stood.RemoveAt(stood.Count - 1);
            }
        }
    }

    private Point Tip(OneStanding place, JackUse use) => PatchLeads.TipOf(problem.FindDevice(place.Placement.Id)!, place.Placement, use, problem.Options.Plugs);
}
