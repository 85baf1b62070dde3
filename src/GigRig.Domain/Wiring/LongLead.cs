using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Wiring;

/// <summary>One lead that hangs on the pickup.</summary>
/// <param name="Capacitance">Picofarads for each metre; null where not known.</param>
public sealed record LeadPiece(Millimetres Length, int? Capacitance);

/// <summary>
/// What the pickup has to drive with every true-bypass box off: all leads and boxes up to the first that buffers, be it a device, the amp or the desk. A box that is on
/// buffers as well, as a rule (common practice), so this is the dullest case.
/// </summary>
/// <param name="Pieces">From the instrument on; at least one.</param>
/// <param name="Boxes">How many boxes of bare wire lie between them.</param>
/// <param name="Buffer">The device that ends it; null where the amp or the desk does.</param>
public sealed record LongLead(ValueList<LeadPiece> Pieces, int Boxes, GearId? Buffer)
{
    public Millimetres Length => Pieces.Aggregate(Millimetres.Zero, (sum, piece) => sum + piece.Length);

    /// <summary>Of each lead the owned one that serves it, or the length it needs. Of a stereo pair only one side counts.</summary>
    public static LongLead Of(LeadPlan plan)
    {
        var pieces = new List<LeadPiece>();
        var from = (HopThing.Instrument, (GearId?)null);
        var hops = plan.Hops.Where(hop => hop.Hop.From.Number == 0).ToList();
        while (hops.Find(hop => Begins(hop.Hop.From, from)) is { } next)
        {
            hops.Remove(next);
            pieces.Add(new(next.Lead?.Length ?? next.Needed, next.Lead?.Capacitance));
            if (next.Hop.To.Thing != HopThing.Device)
                break;
            var id = next.Hop.To.Id!.Value;
            if (plan.Problem.FindDevice(id)!.Bypass == Bypass.Buffered)
                return new(pieces.ToValueList(), pieces.Count - 1, id);
            from = (HopThing.Device, id);
        }

        return new(pieces.ToValueList(), Math.Max(0, pieces.Count - 1), null);
    }

    private static bool Begins(HopEnd end, (HopThing Thing, GearId? Id) from) =>
        end.Thing == from.Thing && (from.Thing == HopThing.Instrument || (end.Id == from.Id && end.Jack is JackUse.Out or JackUse.Send));
}
