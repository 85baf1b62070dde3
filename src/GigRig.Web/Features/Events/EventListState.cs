using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Web.Shared;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Events;

/// <summary>The owner's event types, and the ready ones that can still be added.</summary>
public sealed class EventListState(EventTypeStore events, RoleStore roles)
{
    private ValueList<Stored<EventType>>? all;

    public bool IsLoaded => all is not null;

    public ValueList<Stored<EventType>> All => all ?? [];

    public DeletedJustNow<Stored<EventType>> Deleted { get; } = new(type => type.Id);

    public RoleChoices Roles { get; private set; } = new([]);

    /// <summary>The ready event types of which there is none by that name.</summary>
    public IEnumerable<EventType> Offered => ReadyEventTypes.All.Where(ready => !HasName(ready.Name));

    public async Task LoadAsync()
    {
        Roles = new((await roles.AllAsync()).Select(stored => stored.Item));
        all = await events.AllAsync();
    }

    public Task AddReadyAsync(EventType ready) => AddAsync(ready);

    /// <summary>The copy gets a name that is not taken.</summary>
    public Task<Stored<EventType>> CopyAsync(EventType original) => AddAsync(original with { Name = CopyName.Of(original.Name, HasName) });

    /// <exception cref="StaleVersionException">It was changed since the list was loaded; the list is loaded anew.</exception>
    public Task DeleteAsync(Stored<EventType> type) => Deleted.DeleteAsync(type, () => events.DeleteAsync(type.Id, type.Version), LoadAsync);

    public Task RestoreAsync(Stored<EventType> type) => Deleted.RestoreAsync(type, () => events.RestoreAsync(type.Id), LoadAsync);

    private async Task<Stored<EventType>> AddAsync(EventType type)
    {
        var stored = await events.AddAsync(type);
        await LoadAsync();
        return stored;
    }

    private bool HasName(string name) => All.Any(stored => stored.Item.Name.Equals(name, StringComparison.CurrentCultureIgnoreCase));
}
