using System.ComponentModel;
using GigRig.Domain.Documents.Problem;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Documents;

/// <summary>The planning question as plain numbers and words: the <c>rig-problem/1</c> document, see <c>docs/problem-format.md</c>.</summary>
[Description("A planning question. Whole millimetres, milliamps and grams; volts may carry three decimals.")]
public sealed record RigProblemDocument
{
    public const string FormatWord = "rig-problem/1";

    public required string Format { get; init; }

    public required BoardDocument Board { get; init; }

    public SupplyDocument? Supply { get; init; }

    public AdaptersDocument? Adapters { get; init; }

    public AmpDocument? Amp { get; init; }

    [Within(0, Bounds.MostDevices)]
    public IReadOnlyList<DeviceDocument>? Devices { get; init; }

    [Within(0, Bounds.MostOffBoard)]
    public IReadOnlyList<OffBoardDocument>? OffBoard { get; init; }

    [Description("The leads there are to wire with.")]
    [Within(0, Bounds.MostLeads)]
    public IReadOnlyList<LeadDocument>? Leads { get; init; }

    public InstrumentDocument? Instrument { get; init; }

    public required EventDocument Event { get; init; }

    [Description("What the owner's own roles are called.")]
    [Within(0, Bounds.MostRoles)]
    public IReadOnlyList<RoleTitleDocument>? Roles { get; init; }

    public OptionsDocument? Options { get; init; }

    public static RigProblemDocument Of(RigProblemDraft draft) => new()
    {
        Format = FormatWord,
        Board = BoardDocument.Of(draft.Board),
        Supply = draft.Supply is { } supply ? SupplyDocument.Of(supply) : null,
        Adapters = AdaptersDocument.Of(draft.Adapters),
        Amp = draft.Amp is { } amp ? AmpDocument.Of(amp) : null,
        Devices = draft.Devices.OrNothing(DeviceDocument.Of),
        OffBoard = draft.OffBoard.OrNothing(OffBoardDocument.Of),
        Leads = draft.Leads.OrNothing(LeadDocument.Of),
        Instrument = draft.Instrument is { } instrument ? InstrumentDocument.Of(instrument) : null,
        Event = EventDocument.Of(draft.Event),
        Roles = draft.Roles.OrNothing(RoleTitleDocument.Of),
        Options = draft.Options == PlanOptions.Default ? null : OptionsDocument.Of(draft.Options),
    };

    /// <summary>Not checked yet; <c>RigProblem.Create</c> does that.</summary>
    public RigProblemDraft ToDraft() => new()
    {
        Board = Board.ToBoard(),
        Supply = Supply?.ToSupply(),
        Adapters = Adapters?.ToAdapters() ?? PowerAdapters.None,
        Amp = Amp?.ToAmp(),
        Devices = Devices.ToValues(device => device.ToDevice()),
        OffBoard = OffBoard.ToValues(item => item.ToItem()),
        Leads = Leads.ToValues(lead => lead.ToLead()),
        Instrument = Instrument?.ToInstrument(),
        Event = Event.ToEvent(),
        Roles = Roles.ToValues(role => role.ToTitle()),
        Options = Options?.ToOptions() ?? PlanOptions.Default,
    };
}
