using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Features.Rigs;

/// <summary>The audio order of a rig under the musician's hands. Nothing is stored until they say so.</summary>
public sealed class ChainEdit(RigProblem problem, Rig rig)
{
    public Rig Rig => rig with { Chain = Chain };

    public Chain Chain { get; private set; } = rig.Chain;

    public bool Changed => Chain != rig.Chain;

    public bool HasLoop => problem.Amp is { Loop: not AmpLoop.None };

    public bool IsUsual => Chain == Usual;

    /// <summary>What was done last, in a sentence to be read out.</summary>
    public string Said { get; private set; } = "";

    private Chain Usual => ChainOrder.Order(problem, rig.Placements.Select(placement => placement.Id));

    public void MoveEarlier(GearId id) => MoveBy(id, -1);

    public void MoveLater(GearId id) => MoveBy(id, 1);

    /// <summary>To the end of the loop. Does nothing where the amp has none.</summary>
    public void ToLoop(GearId id) => MoveTo(id, ChainPart.Loop, Chain.Loop.Count);

    /// <summary>To the end of the front.</summary>
    public void ToFront(GearId id) => MoveTo(id, ChainPart.Front, Chain.Front.Count);

    /// <param name="before">How many of the others in that part come before it; beyond its end means last.</param>
    public void MoveTo(GearId id, ChainPart part, int before)
    {
        if (part == ChainPart.Loop && !HasLoop)
            return;
        var (front, loop) = (Without(Chain.Front, id), Without(Chain.Loop, id));
        Chain = part == ChainPart.Loop ? new(front, With(loop, id, before)) : new(With(front, id, before), loop);
        var order = PartOf(part);
        Said = $"{problem.NameOf(id)} is now {order.ToList().IndexOf(id) + 1} of {order.Count} {(part == ChainPart.Loop ? "in the loop" : "in front of the amp")}.";
    }

    public void TakeUsual() => (Chain, Said) = (Usual, "The order is the usual one again.");

    public void PutBack() => (Chain, Said) = (rig.Chain, "The order is as it was saved.");

    public bool IsFirst(GearId id) => Home(id) is var part && PartOf(part) is [var first, ..] && first == id;

    public bool IsLast(GearId id) => PartOf(Home(id)) is [.., var last] && last == id;

    private void MoveBy(GearId id, int step)
    {
        var part = Home(id);
        var at = PartOf(part).ToList().IndexOf(id);
        if (at >= 0)
            MoveTo(id, part, Math.Max(0, at + step));
    }

    private ChainPart Home(GearId id) => Chain.Loop.Contains(id) ? ChainPart.Loop : ChainPart.Front;

    private ValueList<GearId> PartOf(ChainPart part) => part == ChainPart.Loop ? Chain.Loop : Chain.Front;

    private static ValueList<GearId> Without(ValueList<GearId> ids, GearId id) => ids.Where(other => other != id).ToValueList();

    private static ValueList<GearId> With(ValueList<GearId> ids, GearId id, int before) => [.. ids.Take(before), id, .. ids.Skip(before)];
}
