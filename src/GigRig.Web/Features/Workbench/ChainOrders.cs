using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Features.Workbench;

/// <summary>Keeps the musician's audio order when a device comes or goes.</summary>
internal static class ChainOrders
{
    /// <summary>The newcomer goes behind the device that stands before it in the usual order, in the same half; the others stay as they are.</summary>
    /// <param name="rig">With the newcomer on the board already.</param>
    public static Chain With(RigProblem problem, Rig rig, GearId come)
    {
        var usual = ChainOrder.Order(problem, rig.Placements.Select(placement => placement.Id));
        if (usual.Front.Contains(come))
            return rig.Chain with { Front = Inserted(rig.Chain.Front, usual.Front, come) };
        return usual.Loop.Contains(come) ? rig.Chain with { Loop = Inserted(rig.Chain.Loop, usual.Loop, come) } : rig.Chain;
    }

    public static Chain Without(Chain chain, GearId gone) =>
        new(chain.Front.Where(id => id != gone).ToValueList(), chain.Loop.Where(id => id != gone).ToValueList());

    private static ValueList<GearId> Inserted(ValueList<GearId> order, ValueList<GearId> usual, GearId come)
    {
        var before = usual.TakeWhile(id => id != come).LastOrDefault(order.Contains, come);
        var behind = before == come ? 0 : order.TakeWhile(id => id != before).Count() + 1;
        return [.. order.Take(behind), come, .. order.Skip(behind)];
    }
}
