using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Features.Plan;

/// <summary>What can be planned with now: the event types, and the gear that is ready to come along.</summary>
public sealed record PlanOffer(
    ValueList<Stored<EventType>> Events,
    ValueList<Stored<Board>> Boards,
    ValueList<Stored<Supply>> Supplies,
    ValueList<Stored<Amp>> Amps,
    ValueList<Device> Devices,
    ValueList<OffBoardItem> OffBoard,
    ValueList<Lead> Leads,
    ValueList<Stored<Instrument>> Instruments,
    PowerAdapters Adapters,
    ValueList<RoleTitle> Roles)
{
    /// <summary>Gear that is lent out, in repair or gone is left out.</summary>
    public static PlanOffer Of(GearLibrary library, ValueList<Stored<EventType>> events, ValueList<Stored<OwnRole>> roles) => new(
        events,
        Ready(library.Boards),
        Ready(library.Supplies),
        Ready(library.Amps),
        Ready(library.Devices).Select(device => device.Item).ToValueList(),
        Ready(library.OffBoard).Select(item => item.Item).ToValueList(),
        Ready(library.Leads).Select(lead => lead.Item).ToValueList(),
        Ready(library.Instruments),
        library.Adapters,
        roles.Select(role => new RoleTitle(role.Item.Role, role.Item.Title)).ToValueList());

    /// <summary>What may be pinned or banned.</summary>
    public IReadOnlySet<GearId> Ids => Devices.Select(device => device.Id).Concat(OffBoard.Select(item => item.Id)).ToHashSet();

    public bool LacksEvents => Events.Count == 0;

    public bool LacksBoards => Boards.Count == 0;

    public bool LacksDevices => Devices.Count == 0;

    public bool CanPlan => !LacksEvents && !LacksBoards && !LacksDevices;

    /// <summary>The slimmest plug that a ready patch lead has at both ends; slim without such a lead.</summary>
    public PlugShape OwnedPlugs => Leads.Where(lead => lead.Kind == LeadKind.Patch)
        .Select(lead => PlugSizes.LeastOut(lead.FirstPlug) > PlugSizes.LeastOut(lead.SecondPlug) ? lead.FirstPlug : lead.SecondPlug)
        .OrderBy(PlugSizes.LeastOut)
        .FirstOrDefault(PlugShape.Slim);

    /// <summary>The question, not checked yet.</summary>
    public RigProblemDraft Draft(PlanSelection selection, PlanOptions options) => new()
    {
        Board = PlanSelection.Pick(Boards, selection.Board)!.Item,
        Supply = PlanSelection.Pick(Supplies, selection.Supply)?.Item,
        Adapters = Adapters,
        Amp = PlanSelection.Pick(Amps, selection.Amp)?.Item,
        Devices = Devices,
        OffBoard = OffBoard,
        Leads = Leads,
        Instrument = PlanSelection.Pick(Instruments, selection.Instrument)?.Item,
        Roles = Roles,
        Event = PlanSelection.Pick(Events, selection.Event)!.Item,
        Options = options with { Plugs = PlugSizes.For(selection.PlugShape ?? OwnedPlugs) },
    };

    private static ValueList<Stored<T>> Ready<T>(ValueList<Stored<OwnedGear<T>>> owned)
        where T : class =>
        owned.Where(thing => thing.Item.Ownership.Status == GearStatus.Ready)
            .Select(thing => new Stored<T>(thing.Id, thing.Version, thing.Item.Thing))
            .ToValueList();
}
