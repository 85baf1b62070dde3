using GigRig.Data;
using GigRig.Domain.Events;
using GigRig.Web.Shared.Editing;

namespace GigRig.Web.Features.Events;

/// <summary>One event type being added or edited.</summary>
public sealed class EventTypeState(EventTypeStore events, RoleStore roles) : ItemState<EventType, EventTypeForm>("event-type", roles)
{
    protected override Task<Stored<EventType>?> FindAsync(Guid id) => events.FindAsync(id);

    protected override Task<Stored<EventType>> AddAsync(EventType item) => events.AddAsync(item);

    protected override Task<Stored<EventType>> SaveAsync(Stored<EventType> mine) => events.SaveAsync(mine);

    protected override Task DeleteAsync(Guid id, int version) => events.DeleteAsync(id, version);

    protected override Task RestoreAsync(Guid id) => events.RestoreAsync(id);
}
