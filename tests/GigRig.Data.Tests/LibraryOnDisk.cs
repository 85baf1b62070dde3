using GigRig.Data.Owners;
using GigRig.Data.Start;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace GigRig.Data.Tests;

/// <summary>A real library in a temporary folder, opened as the app opens it, with a clock that stands where it is put.</summary>
internal sealed class LibraryOnDisk : IAsyncDisposable
{
    private readonly ServiceProvider services;

    private LibraryOnDisk(string path, OwnerContext owner)
    {
        Folder = new DataFolder(path);
        services = new ServiceCollection()
            .AddSingleton<TimeProvider>(Clock)
            .AddSingleton(owner)
            .AddGigRigData(path)
            .BuildServiceProvider();
    }

    public DataFolder Folder { get; }

    public StandingClock Clock { get; } = new();

    public IServiceProvider Services => services;

    public GearStore Gear => services.GetRequiredService<GearStore>();

    public EventTypeStore Events => services.GetRequiredService<EventTypeStore>();

    public RoleStore Roles => services.GetRequiredService<RoleStore>();

    public RigStore Rigs => services.GetRequiredService<RigStore>();

    public ShareLinkStore Links => services.GetRequiredService<ShareLinkStore>();

    public SharedRigReader Shared => services.GetRequiredService<SharedRigReader>();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static async Task<LibraryOnDisk> NewAsync()
    {
        var library = Unopened();
        await library.OpenAsync();
        return library;
    }

    /// <summary>The stores over a folder, without the start-up.</summary>
    public static LibraryOnDisk Unopened(string? path = null) => new(path ?? Directory.CreateTempSubdirectory("gigrig-test-").FullName, OwnerContext.Local);

    /// <summary>The same database as somebody else sees it.</summary>
    public LibraryOnDisk AsOwner(Guid other) => new(Folder.Path, new OwnerContext(other));

    public Task OpenAsync() => DatabaseStart.RunAsync(Services, Cancel);

    public GigRigDb Database() => services.GetRequiredService<IDbContextFactory<GigRigDb>>().CreateDbContext();

    public ValueTask CloseAsync()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        return services.DisposeAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await CloseAsync();
        if (Directory.Exists(Folder.Path))
            Directory.Delete(Folder.Path, recursive: true);
    }
}
