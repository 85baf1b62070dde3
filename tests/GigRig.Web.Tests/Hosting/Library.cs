using GigRig.Data;
using GigRig.Data.Files;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using Microsoft.Extensions.DependencyInjection;

namespace GigRig.Web.Tests.Hosting;

/// <summary>A real library in a folder of its own. Thrown away with the test.</summary>
internal sealed class Library : IAsyncDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("gigrig-library-");

    private Library()
    {
    }

    public ServiceProvider Services { get; private set; } = null!;

    public GearStore Gear => Services.GetRequiredService<GearStore>();

    public GearBatchStore Batch => Services.GetRequiredService<GearBatchStore>();

    public GearPhotoStore Photos => Services.GetRequiredService<GearPhotoStore>();

    public EventTypeStore Events => Services.GetRequiredService<EventTypeStore>();

    public RigStore Rigs => Services.GetRequiredService<RigStore>();

    public RoleStore Roles => Services.GetRequiredService<RoleStore>();

    public LibraryFile File => Services.GetRequiredService<LibraryFile>();

    public ShareLinkStore Links => Services.GetRequiredService<ShareLinkStore>();

    public SharedRigReader Reader => Services.GetRequiredService<SharedRigReader>();

    public TimeProvider Time => Services.GetRequiredService<TimeProvider>();

    public static async Task<Library> OpenAsync()
    {
        var library = new Library();
        library.Services = new ServiceCollection().AddGigRigData(library.folder.FullName).BuildServiceProvider();
        await DatabaseStart.RunAsync(library.Services);
        return library;
    }

    public async Task<Library> WithAsync<T>(T thing, GearStatus status = GearStatus.Ready)
        where T : class
    {
        await Gear.AddAsync(thing, new Ownership(status));
        return this;
    }

    public async Task<Library> WithAsync(EventType eventType)
    {
        await Events.AddAsync(eventType);
        return this;
    }

    public async ValueTask DisposeAsync()
    {
        await Services.DisposeAsync();
        folder.Delete(recursive: true);
    }
}
