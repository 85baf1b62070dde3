using GigRig.Data;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace GigRig.Web.Tests;

/// <summary>A real library in a temporary folder, opened as the app opens it.</summary>
internal sealed class StoredLibrary : IAsyncDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("gigrig-pages-");
    private readonly ServiceProvider services;

    private StoredLibrary() => services = new ServiceCollection().AddGigRigData(folder.FullName).BuildServiceProvider();

    public GearStore Gear => services.GetRequiredService<GearStore>();

    public EventTypeStore Events => services.GetRequiredService<EventTypeStore>();

    public RoleStore Roles => services.GetRequiredService<RoleStore>();

    public static async Task<StoredLibrary> OpenAsync()
    {
        var library = new StoredLibrary();
        await DatabaseStart.RunAsync(library.services, TestContext.Current.CancellationToken);
        return library;
    }

    public T Get<T>()
        where T : notnull => services.GetRequiredService<T>();

    public async ValueTask DisposeAsync()
    {
        SqliteConnection.ClearAllPools();
        await services.DisposeAsync();
        folder.Delete(recursive: true);
    }
}
