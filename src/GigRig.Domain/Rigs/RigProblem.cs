using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Rigs;

/// <summary>What is asked of the planner, not checked yet.</summary>
public sealed record RigProblemDraft
{
    public required Board Board { get; init; }

    /// <summary>Null where nothing is fed from a supply.</summary>
    public Supply? Supply { get; init; }

    public PowerAdapters Adapters { get; init; } = PowerAdapters.None;

    /// <summary>Null where the event brings none or it does not matter. An amp that is given always comes along.</summary>
    public Amp? Amp { get; init; }

    public ValueList<Device> Devices { get; init; }

    public ValueList<OffBoardItem> OffBoard { get; init; }

    /// <summary>The leads there are to wire with.</summary>
    public ValueList<Lead> Leads { get; init; }

    /// <summary>Null where it does not matter or is not said.</summary>
    public Instrument? Instrument { get; init; }

    public required EventType Event { get; init; }

    /// <summary>Titles of the owner's own roles, so that whoever reads the question or the rig later knows what they are called.</summary>
    public ValueList<RoleTitle> Roles { get; init; }

    public PlanOptions Options { get; init; } = PlanOptions.Default;
}

/// <summary>A question that makes sense: every number within its limits, every name known and used once. Made only by <see cref="Create"/>.</summary>
public sealed class RigProblem
{
    private readonly Dictionary<GearId, Device> devices;
    private readonly Dictionary<GearId, OffBoardItem> offBoard;
    private readonly Dictionary<string, Outlet> outlets;
    private readonly Dictionary<Role, string> titles;

    private RigProblem(RigProblemDraft draft)
    {
        Draft = draft;
        devices = draft.Devices.ToDictionary(d => d.Id);
        offBoard = draft.OffBoard.ToDictionary(i => i.Id);
        outlets = (draft.Supply?.Outlets ?? []).ToDictionary(o => o.Id, StringComparer.Ordinal);
        titles = draft.Roles.ToDictionary(role => role.Role, role => role.Title);
    }

    /// <summary>All of it as it was given, for writing down or for asking again with a change.</summary>
    public RigProblemDraft Draft { get; }

    public Board Board => Draft.Board;

    public Supply? Supply => Draft.Supply;

    public PowerAdapters Adapters => Draft.Adapters;

    public Amp? Amp => Draft.Amp;

    public ValueList<Device> Devices => Draft.Devices;

    public ValueList<OffBoardItem> OffBoard => Draft.OffBoard;

    public ValueList<Lead> Leads => Draft.Leads;

    public Instrument? Instrument => Draft.Instrument;

    public EventType Event => Draft.Event;

    public PlanOptions Options => Draft.Options;

    public ValueList<RoleTitle> Roles => Draft.Roles;

    public Device? FindDevice(GearId id) => devices.GetValueOrDefault(id);

    public OffBoardItem? FindOffBoard(GearId id) => offBoard.GetValueOrDefault(id);

    public Outlet? FindOutlet(string id) => outlets.GetValueOrDefault(id);

    /// <summary>The name of a device, an off-board thing, the board, supply, amp or instrument; the id itself where nothing has it.</summary>
    public string NameOf(GearId id) =>
        FindDevice(id)?.Name ?? FindOffBoard(id)?.Name
        ?? (id == Board.Id ? Board.Name : id == Supply?.Id ? Supply?.Name : id == Amp?.Id ? Amp?.Name : id == Instrument?.Id ? Instrument?.Name : null)
        ?? id.Value;

    /// <summary>What to call a role: the owner's title, else that of the catalogue, else its key.</summary>
    public string TitleOf(Role role) => titles.GetValueOrDefault(role) ?? RoleCatalogue.TitleOf(role);

    /// <summary>Checks everything once and names every fault found, not only the first.</summary>
    public static ProblemCheck Create(RigProblemDraft draft) => DraftCheck.Run(draft) is { Count: > 0 } complaints
        ? new ProblemCheck.Refused(complaints)
        : new ProblemCheck.Accepted(new RigProblem(draft));
}

/// <summary>The answer of <see cref="RigProblem.Create"/>: a problem, or at least one complaint.</summary>
public abstract record ProblemCheck
{
    private ProblemCheck()
    {
    }

    public sealed record Accepted(RigProblem Problem) : ProblemCheck;

    public sealed record Refused(ValueList<Complaint> Complaints) : ProblemCheck
    {
        public ValueList<Complaint> Complaints { get; } = Complaint.AtLeastOne(Complaints);
    }
}
