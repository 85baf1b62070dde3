using GigRig.Data.Files;
using GigRig.Data.Owners;
using GigRig.Data.Start;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace GigRig.Data.Tests;

/// <summary>A real library in a temporary folder, opened as the app opens it, with a clock that stands where it is put.</summary>
internal sealed class LibraryOnDisk : IAsyncDisposable
{
    // Making the tables is most of a first start, so it is done once for all tests that are not about it.
    private static readonly Lazy<Task<byte[]>> Empty = new(MakeEmptyAsync);

    private readonly ServiceProvider services;
    private readonly bool guest;

    private LibraryOnDisk(string path, OwnerContext owner, bool guest = false)
    {
        this.guest = guest;
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

    public GearBatchStore Batch => services.GetRequiredService<GearBatchStore>();

    public GearPhotoStore Photos => services.GetRequiredService<GearPhotoStore>();

    public EventTypeStore Events => services.GetRequiredService<EventTypeStore>();

    public RoleStore Roles => services.GetRequiredService<RoleStore>();

    public RigStore Rigs => services.GetRequiredService<RigStore>();

    public ShareLinkStore Links => services.GetRequiredService<ShareLinkStore>();

    public LibraryFile File => services.GetRequiredService<LibraryFile>();

    public SharedRigReader Shared => services.GetRequiredService<SharedRigReader>();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static async Task<LibraryOnDisk> NewAsync()
    {
        var library = Unopened();
        await System.IO.File.WriteAllBytesAsync(library.Folder.Database, await Empty.Value, Cancel);
        await library.OpenAsync();
        return library;
    }

    /// <summary>The stores over a folder, without the start-up.</summary>
    public static LibraryOnDisk Unopened(string? path = null) => new(path ?? Directory.CreateTempSubdirectory("gigrig-test-").FullName, OwnerContext.Local);

    /// <summary>The same database as somebody else sees it. It stays when the guest goes.</summary>
    public LibraryOnDisk AsOwner(Guid other) => new(Folder.Path, new OwnerContext(other), guest: true);

    public Task OpenAsync() => DatabaseStart.RunAsync(Services, Cancel);

    public GigRigDb Database() => services.GetRequiredService<IDbContextFactory<GigRigDb>>().CreateDbContext();

    public ValueTask CloseAsync()
    {
        SqliteConnection.ClearAllPools();
        return services.DisposeAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await CloseAsync();
        if (!guest && Directory.Exists(Folder.Path))
            Directory.Delete(Folder.Path, recursive: true);
    }

    private static async Task<byte[]> MakeEmptyAsync()
    {
        await using var library = Unopened();
        await library.OpenAsync();
        await library.CloseAsync();
        return await System.IO.File.ReadAllBytesAsync(library.Folder.Database);
    }
}
