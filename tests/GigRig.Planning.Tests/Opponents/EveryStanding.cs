using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>
/// Tries every place of every thing. Complete without any argument about corners or normal patterns: a placement holds whole millimetres, so the places of a
/// body on a board are finitely many, and each of them is tried in each allowed turn. All sides are whole millimetres too, so two rectangles overlap exactly
/// where they share a square millimetre; that goes for bodies, plugs and keep-outs alike. Rails, lid and edges concern one thing at a time and are
/// judged when its places are listed. For tiny boards only.
/// </summary>
internal sealed class EveryStanding
{
    private readonly RigProblem problem;
    private readonly Dictionary<GearId, OneStanding[]> alone;
    private readonly OneStanding[]? supply;

    public EveryStanding(RigProblem problem)
    {
        this.problem = problem;
        var listing = new StandingList(problem);
        alone = problem.Devices.ToDictionary(d => d.Id, d => Allowed(listing.Of(d.Id, d.Size.Height, Footprint.Of(d, problem.Options.Plugs), d.Turns)));
        supply = problem.Supply is { Mount: SupplyMount.Top, Size: { } size } top ? Allowed(listing.Of(top.Id, size.Height, Footprint.Of(size), [Turn.None, Turn.Quarter])) : null;

        OneStanding[] Allowed(OneStanding[] places) => Array.FindAll(places, place => problem.Options.Fixed.All(f => f.Id != place.Placement.Id || f == place.Placement));
    }

    public OneStanding[] Of(GearId device) => alone[device];

    /// <summary>Null unless the supply goes on top.</summary>
    public OneStanding[]? OfSupply => supply;

    public bool HasRoomForSupplyBelow
    {
        get
        {
            if (problem.Supply is not { Mount: SupplyMount.Under, Size: { } size })
                return true;
            int[] sides = [size.Width.Value, size.Depth.Value];
            int[] room = [problem.Board.Width.Value, problem.Board.Depth.Value];
            return sides.Max() <= room.Max() && sides.Min() <= room.Min() && size.Height.Value <= (problem.Board.ClearanceUnder?.Value ?? int.MaxValue);
        }
    }

    /// <summary>Where these devices stand together, with the supply among them where it goes on top, in no order; null where there is no such place.</summary>
    public IReadOnlyList<Placement>? Find(IEnumerable<GearId> devices)
    {
        var open = devices.Select(id => alone[id]).ToList();
        if (supply is not null)
            open.Add(supply);
        var found = new List<Placement>();
        return Stand(open, found) ? found : null;
    }

    public bool AreApart(OneStanding a, OneStanding b) => !a.Taken.Meets(b.Taken) && SwitchesAreApart(a, b);

    /// <summary>Always the thing with the fewest places left, so that dead ends show early; the answer does not depend on it.</summary>
    private bool Stand(List<OneStanding[]> open, List<Placement> found)
    {
        if (open.Count == 0)
            return true;
        var next = open.MinBy(places => places.Length)!;
        var others = open.Where(places => places != next).ToList();
        foreach (var place in next)
        {
            found.Add(place.Placement);
            if (Stand([.. others.Select(places => Array.FindAll(places, other => AreApart(place, other)))], found))
                return true;
            found.RemoveAt(found.Count - 1);
        }

        return false;
    }

    private bool SwitchesAreApart(OneStanding a, OneStanding b)
    {
        var least = problem.Options.SwitchSpacing.Value;
        return !a.Switches.Any(p => b.Switches.Any(q => (p.X - q.X) * (p.X - q.X) + (p.Y - q.Y) * (p.Y - q.Y) < least * least));
    }
}
