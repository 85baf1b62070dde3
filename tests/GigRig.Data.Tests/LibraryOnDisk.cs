using GigRig.Data.Files;
using GigRig.Data.Owners;
using GigRig.Data.Start;
using GigRig.Data.Tests.Owners;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;

namespace GigRig.Data.Tests;

/// <summary>A real library in a temporary folder, opened as the app opens it, with a clock that stands where it is put.</summary>
internal sealed class LibraryOnDisk : IAsyncDisposable
{
    // Making the tables is most of a first start, so it is done once for all tests that are not about it.
    private static readonly Lazy<Task<byte[]>> Empty = new(MakeEmptyAsync);

    private readonly ServiceProvider services;
    private readonly bool guest;

    private LibraryOnDisk(string path, OwnerContext owner, bool guest = false, IInterceptor? trouble = null)
    {
        this.guest = guest;
        Folder = new DataFolder(path);
        services = new ServiceCollection()
            .AddSingleton<TimeProvider>(Clock)
            .AddSingleton(owner)
            .AddGigRigData(path)
            .ConfigureDbContext<GigRigDb>(options => options.AddInterceptors(trouble is null ? [] : [trouble]))
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

    /// <param name="trouble">What goes wrong with its database.</param>
    public static async Task<LibraryOnDisk> NewAsync(IInterceptor? trouble = null)
    {
        var library = Unopened(trouble: trouble);
        await System.IO.File.WriteAllBytesAsync(library.Folder.Database, await Empty.Value, Cancel);
        await library.OpenAsync();
        return library;
    }

    /// <summary>The stores over a folder, without the start-up.</summary>
    public static LibraryOnDisk Unopened(string? path = null, IInterceptor? trouble = null) =>
        new(path ?? Directory.CreateTempSubdirectory("gigrig-test-").FullName, OwnerContext.Local, trouble: trouble);

    /// <summary>The same over a folder that stays when this one goes.</summary>
    public static LibraryOnDisk On(string path, IInterceptor? trouble = null) => new(path, OwnerContext.Local, guest: true, trouble);

    /// <summary>A further start on the same folder.</summary>
    public LibraryOnDisk Again(IInterceptor? trouble = null) => On(Folder.Path, trouble);

    /// <summary>A folder with one of everything in it, in the shape of the first release.</summary>
    public static async Task<LibraryOnDisk> OldestAsync()
    {
        var library = await NewAsync();
        await Belongings.PutAsync(library, Cancel);
        await using (var db = library.Database())
        {
            await db.Database.MigrateAsync(db.Database.GetMigrations().First(), Cancel);
            // What is freed on the way back would be room that no such library has.
            await db.Database.ExecuteSqlRawAsync("VACUUM", Cancel);
        }

        await library.CloseAsync();
        return library;
    }

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
