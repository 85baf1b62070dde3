using GigRig.Domain.Formulas;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Wiring;

/// <summary>Ways to wire the instrument that are held side by side.</summary>
public enum ToneWay
{
    AsWired,

    /// <summary>With a buffer where the board begins: the pickup drives the instrument lead alone.</summary>
    BufferFirst,

    /// <summary>3 m of the same lead and nothing else, to hold the others against.</summary>
    ShortLead,
}

/// <summary>One way to wire the instrument. Three circuits, because what is not known lies between a bright and a dark end; they are the same where all is known.</summary>
/// <param name="Length">Of all leads the pickup drives.</param>
public sealed record ToneCase(ToneWay Way, Millimetres Length, int Boxes, PickupCircuit Bright, PickupCircuit Middle, PickupCircuit Dark);

/// <summary>
/// The tone of the long lead: where pickup and cable resonate together, and how far that moves. By inductance and capacitance, never by the wire's resistance and
/// capacitance: that would promise treble that is not there.
/// </summary>
/// <param name="Lead">What hangs on the pickup.</param>
/// <param name="Cases">As wired first, the short lead last.</param>
public sealed record LeadTone(LongLead Lead, ValueList<ToneCase> Cases)
{
    /// <summary>Metres; what the others are held against.</summary>
    public const int ShortLead = 3;

    /// <summary>pF/m where an instrument lead does not say its own (electronics article, player's article).</summary>
    public const int LeastCable = 52;
    public const int MostCable = 200;

    /// <summary>pF of winding where the pickup does not say (H. Lemme, as quoted).</summary>
    public const int LeastWinding = 80;
    public const int MostWinding = 200;

    /// <summary>mH where the pickup does not say (H. Lemme, as quoted).</summary>
    public const int LeastInductance = 1000;
    public const int MostInductance = 10_000;

    /// <summary>Ω of the volume control where the instrument does not say; from memory.</summary>
    public const int UsualVolume = 250_000;

    /// <summary>Ω of an amp's or a device's input (electronics article).</summary>
    public const int Input = 1_000_000;

    /// <summary>Ω of wire for each henry: 6.7 kΩ with 3.4 H and 11.9 kΩ with 5.8 H in two physics exercises.</summary>
    public const int WirePerHenry = 2000;

    /// <summary>Millimetres of lead that a box of bare wire is good for: about two feet (common practice).</summary>
    public const int BoxAsLead = 600;

    /// <summary>Ω of what drives the lead behind a buffer, at most (common practice).</summary>
    public const int Buffer = 1000;

    /// <summary>Null where no magnetic pickup drives the lead: an active instrument or a keyboard, or nothing is wired.</summary>
    public static LeadTone? Of(LeadPlan plan)
    {
        var pickup = plan.Problem.Instrument?.Pickup ?? Pickup.Unknown;
        if (pickup.Active == true || plan.Problem.Instrument?.Family == InstrumentFamily.Keyboard)
            return null;
        var lead = LongLead.Of(plan);
        if (lead.Pieces.Count == 0)
            return null;
        var first = lead.Pieces[0];
        var cases = new List<ToneCase> { CaseOf(ToneWay.AsWired, pickup, lead.Pieces, lead.Boxes) };
        if (lead.Boxes > 0)
            cases.Add(CaseOf(ToneWay.BufferFirst, pickup, [first], 0));
        cases.Add(CaseOf(ToneWay.ShortLead, pickup, [first with { Length = (ShortLead * 1000).Mm }], 0));
        return new(lead, cases.ToValueList());
    }

    private static ToneCase CaseOf(ToneWay way, Pickup pickup, ValueList<LeadPiece> pieces, int boxes)
    {
        // A box counts as a length of whatever cable is met; it has none of its own to ask.
        var bright = Circuit(pickup.Inductance ?? LeastInductance, Picofarads(pickup.Capacitance ?? LeastWinding, pieces, boxes, LeastCable), pickup);
        var dark = Circuit(pickup.Inductance ?? MostInductance, Picofarads(pickup.Capacitance ?? MostWinding, pieces, boxes, MostCable), pickup);
        var length = pieces.Aggregate(Millimetres.Zero, (sum, piece) => sum + piece.Length);
        return new(way, length, boxes, bright, PickupCircuit.Between(bright, dark), dark);
    }

    private static PickupCircuit Circuit(int millihenries, decimal picofarads, Pickup pickup) =>
        PickupCircuit.Of(millihenries, WirePerHenry * millihenries / 1000, picofarads, pickup.Volume ?? UsualVolume, Input);

    private static decimal Picofarads(int winding, ValueList<LeadPiece> pieces, int boxes, int cable) => CableCapacitance.Total(
        winding,
        [.. pieces.Select(piece => CableCapacitance.OfLead(piece.Length, piece.Capacitance ?? cable)), CableCapacitance.OfLead((boxes * BoxAsLead).Mm, cable)]);
}
