using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Features.Start;

/// <summary>What the library holds, and from that what could be done next.</summary>
public sealed class StartPageState(GearStore gear, EventTypeStore events, RigStore rigs, RoleStore roles, DemoLibrary demo)
{
    private const int FewRigs = 4;
    private GearLibrary? library;

    public bool IsLoaded => library is not null;

    /// <summary>Nothing was ever put in.</summary>
    public bool IsFirstRun => library is { Devices.Count: 0, Boards.Count: 0, Supplies.Count: 0, Amps.Count: 0, OffBoard.Count: 0, Leads.Count: 0, Instruments.Count: 0 }
        && EventTypes.Count == 0
        && LatestRigs.Count == 0;

    public bool HasDemo { get; private set; }

    public int Devices => library?.Devices.Count ?? 0;

    public int Boards => library?.Boards.Count ?? 0;

    public bool CanPlan => Devices > 0 && Boards > 0 && EventTypes.Count > 0;

    public ValueList<Stored<EventType>> EventTypes { get; private set; }

    public RoleChoices Roles { get; private set; } = new([]);

    /// <summary>Latest first.</summary>
    public IReadOnlyList<Stored<RigSummary>> LatestRigs { get; private set; } = [];

    public async Task LoadAsync()
    {
        EventTypes = await events.AllAsync();
        Roles = new((await roles.AllAsync()).Select(role => role.Item));
        LatestRigs = [.. (await rigs.AllAsync()).OrderByDescending(rig => rig.Item.SavedUtc).Take(FewRigs)];
        HasDemo = (await demo.FindAsync()).Count > 0;
        library = await gear.AllAsync();
    }

    public async Task LookAroundAsync()
    {
        await demo.BringInAsync();
        await StartEmptyAsync();
    }

    /// <summary>Event types are a start that nobody has to type: the ready ones come along either way.</summary>
    public async Task StartEmptyAsync()
    {
        var have = (await events.AllAsync()).Select(stored => stored.Item.Name).ToHashSet(StringComparer.CurrentCultureIgnoreCase);
        foreach (var ready in ReadyEventTypes.All.Where(ready => !have.Contains(ready.Name)))
            await events.AddAsync(ready);
        await LoadAsync();
    }

    public async Task<IReadOnlyList<Guid>> TakeDemoAwayAsync()
    {
        try
        {
            return await demo.TakeAwayAsync();
        }
        finally
        {
            await LoadAsync();
        }
    }

    public async Task BringDemoBackAsync(IEnumerable<Guid> ids)
    {
        await demo.BringBackAsync(ids);
        await LoadAsync();
    }
}
