using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Data.Checks;

/// <summary>
/// What a planning problem would refuse is not stored in the first place, and by the very same checks: each thing is put into a problem of
/// its own. The paths of the complaints start at the thing. Its id does not matter here: the store gives it one.
/// </summary>
internal static class ProblemParts
{
    private static readonly GearId AnyId = new("thing of the check");

    private static readonly RigProblemDraft Bare = new()
    {
        Board = new Board(new("board of the check"), "board", 100.Mm, 100.Mm, Grams.Zero, [], [], Overhang.Usual),
        Event = new EventType("event", [], [], EventLimits.None),
    };

    public static IEnumerable<Complaint> Of(Device device) => Of(Bare with { Devices = [device with { Id = AnyId }] }, "/devices/0");

    public static IEnumerable<Complaint> Of(Board board) => Of(Bare with { Board = board with { Id = AnyId } }, "/board");

    public static IEnumerable<Complaint> Of(Supply supply) => Of(Bare with { Supply = supply with { Id = AnyId } }, "/supply");

    public static IEnumerable<Complaint> Of(Amp amp) => Of(Bare with { Amp = amp with { Id = AnyId } }, "/amp");

    public static IEnumerable<Complaint> Of(OffBoardItem item) => Of(Bare with { OffBoard = [item with { Id = AnyId }] }, "/offBoard/0");

    public static IEnumerable<Complaint> Of(Lead lead) => Of(Bare with { Leads = [lead with { Id = AnyId }] }, "/leads/0");

    public static IEnumerable<Complaint> Of(Instrument instrument) => Of(Bare with { Instrument = instrument with { Id = AnyId } }, "/instrument");

    public static IEnumerable<Complaint> Of(PowerAdapters adapters) => Of(Bare with { Adapters = adapters }, "/adapters");

    public static IEnumerable<Complaint> Of(EventType eventType) => Of(Bare with { Event = eventType }, "/event");

    private static IEnumerable<Complaint> Of(RigProblemDraft draft, string place) => RigProblem.Create(draft) is ProblemCheck.Refused refused
        ? refused.Complaints.Select(complaint => complaint with { Path = complaint.Path.StartsWith(place, StringComparison.Ordinal) ? complaint.Path[place.Length..] : complaint.Path })
        : [];
}
