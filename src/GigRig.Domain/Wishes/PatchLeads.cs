using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Wishes;

/// <summary>How much patch lead a rig takes. Leads are measured along and across the board, plug tip to plug tip.</summary>
public static class PatchLeads
{
    /// <summary>
    /// The sum over consecutive devices of each part of the chain, in millimetres. A device without the jack asked for counts from the middle of its body.
    /// Devices of the chain that stand nowhere are passed over. The long leads to instrument and amp are not patch leads.
    /// </summary>
    public static Millimetres Length(RigProblem problem, Rig rig)
    {
        var placed = rig.Placements.DistinctBy(placement => placement.Id).ToDictionary(placement => placement.Id);
        return (Along(rig.Chain.Front) + Along(rig.Chain.Loop)).Mm;

        int Along(ValueList<GearId> part)
        {
            var stops = part.Where(id => placed.ContainsKey(id) && problem.FindDevice(id) is not null).ToList();
            return stops.Zip(stops.Skip(1), (from, to) => Distance(Tip(from, JackUse.Out), Tip(to, JackUse.In))).Sum();
        }

        Point Tip(GearId id, JackUse use) => TipOf(problem.FindDevice(id)!, placed[id], use, problem.Options.Plugs);
    }

    /// <summary>Where the lead at the first jack of this use begins or ends; the middle of the body where there is no such jack.</summary>
    public static Point TipOf(Device device, Placement placement, JackUse use, PlugSizes plugs)
    {
        var outline = Outline.Of(device, plugs);
        return outline.PlacedJacks(placement).FirstOrDefault(jack => jack.Jack.Use == use)?.Tip ?? outline.BodyAt(placement).Middle;
    }

    private static int Distance(Point a, Point b) => Math.Abs(a.X.Value - b.X.Value) + Math.Abs(a.Y.Value - b.Y.Value);
}
