using GigRig.Data.Files;
using GigRig.Data.Owners;
using GigRig.Data.Start;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace GigRig.Data;

/// <summary>Puts the stores into the service collection.</summary>
public static class GigRigDataServices
{
    /// <param name="dataFolder">Where the database, its copies and its lock are kept. Made by <see cref="DatabaseStart.RunAsync"/>.</param>
    public static IServiceCollection AddGigRigData(this IServiceCollection services, string dataFolder)
    {
        var folder = new DataFolder(dataFolder);
        services.TryAddSingleton(TimeProvider.System);
        services.TryAddSingleton(OwnerContext.Local);
        services.AddSingleton(folder);
        services.AddSingleton<DataFolderLock>();
        services.AddSingleton<OwnerGuard>();
        services.AddDbContextFactory<GigRigDb>((provider, options) => options
            .UseSqlite(folder.ConnectionString)
            // A link whose rig was deleted is meant to find nothing.
            .ConfigureWarnings(warnings => warnings.Ignore(
                CoreEventId.PossibleIncorrectRequiredNavigationWithQueryFilterInteractionWarning,
                // DatabaseStart puts all migrations into one transaction. It holds the folder, which is what this warns of losing.
                RelationalEventId.MigrationsUserTransactionWarning))
            .AddInterceptors(new SafeConnection(), new RigHistory(), provider.GetRequiredService<OwnerGuard>()));
        services.AddSingleton(provider => new GearStore(Databases(provider), Time(provider)));
        services.AddSingleton(provider => new GearBatchStore(Databases(provider), Time(provider)));
        services.AddSingleton(provider => new GearPhotoStore(Databases(provider), Time(provider)));
        services.AddSingleton(provider => new EventTypeStore(Databases(provider), Time(provider)));
        services.AddSingleton(provider => new RoleStore(Databases(provider), Time(provider)));
        services.AddSingleton(provider => new RigStore(Databases(provider), Time(provider)));
        services.AddSingleton(provider => new ShareLinkStore(Databases(provider), Time(provider)));
        services.AddSingleton(provider => new SharedRigReader(Databases(provider), Time(provider)));
        services.AddSingleton(provider => new LibraryFile(Databases(provider), Time(provider)));
        return services;
    }

    private static IDbContextFactory<GigRigDb> Databases(IServiceProvider provider) => provider.GetRequiredService<IDbContextFactory<GigRigDb>>();

    private static TimeProvider Time(IServiceProvider provider) => provider.GetRequiredService<TimeProvider>();
}
