using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>
/// Checks one thing by the same code that checks a whole question to the planner, in an otherwise harmless one: limits are written down once.
/// </summary>
internal static class ThingCheck
{
    private static readonly RigProblemDraft Harmless = new()
    {
        Board = new(new("harmless board"), "Board", 500.Mm, 300.Mm, Grams.Zero, [], [], Overhang.Usual),
        Event = new("Any", [], [], EventLimits.None),
    };

    public static IEnumerable<Complaint> Of(Device device) => Check(Harmless with { Devices = [device] });

    public static IEnumerable<Complaint> Of(Board board) => Check(Harmless with { Board = board });

    public static IEnumerable<Complaint> Of(Supply supply) => Check(Harmless with { Supply = supply });

    public static IEnumerable<Complaint> Of(Amp amp) => Check(Harmless with { Amp = amp });

    public static IEnumerable<Complaint> Of(OffBoardItem item) => Check(Harmless with { OffBoard = [item] });

    public static IEnumerable<Complaint> Of(Lead lead) => Check(Harmless with { Leads = [lead] });

    public static IEnumerable<Complaint> Of(Instrument instrument) => Check(Harmless with { Instrument = instrument });

    public static IEnumerable<Complaint> Of(PowerAdapters adapters) => Check(Harmless with { Adapters = adapters });

    private static IEnumerable<Complaint> Check(RigProblemDraft draft) =>
        RigProblem.Create(draft) is ProblemCheck.Refused refused ? refused.Complaints : ValueList.Create<Complaint>([]);
}
