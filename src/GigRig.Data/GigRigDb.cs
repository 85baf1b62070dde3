using GigRig.Data.Configurations;
using GigRig.Data.Owners;
using GigRig.Data.Rows;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data;

/// <summary>The one database. Never leaves this project: the stores open one, use it for one operation and dispose it.</summary>
internal sealed class GigRigDb(DbContextOptions<GigRigDb> options, OwnerContext owner) : DbContext(options)
{
    /// <summary>Queries see this owner's rows only.</summary>
    public const string OwnerFilter = "owner";

    /// <summary>Queries don't see what was deleted.</summary>
    public const string DeletedFilter = "deleted";

    public DbSet<DeviceRow> Devices => Set<DeviceRow>();

    public DbSet<BoardRow> Boards => Set<BoardRow>();

    public DbSet<SupplyRow> Supplies => Set<SupplyRow>();

    public DbSet<AmpRow> Amps => Set<AmpRow>();

    public DbSet<OffBoardRow> OffBoard => Set<OffBoardRow>();

    public DbSet<LeadRow> Leads => Set<LeadRow>();

    public DbSet<InstrumentRow> Instruments => Set<InstrumentRow>();

    public DbSet<AdaptersRow> Adapters => Set<AdaptersRow>();

    public DbSet<GearPhotoRow> GearPhotos => Set<GearPhotoRow>();

    public DbSet<RoleRow> Roles => Set<RoleRow>();

    public DbSet<EventTypeRow> EventTypes => Set<EventTypeRow>();

    public DbSet<RigRow> Rigs => Set<RigRow>();

    public DbSet<RigVersionRow> RigVersions => Set<RigVersionRow>();

    public DbSet<ShareLinkRow> ShareLinks => Set<ShareLinkRow>();

    private Guid OwnerId => owner.OwnerId;

    /// <exception cref="NotWrittenException">The disk did not take it. Nothing was saved.</exception>
    public override async Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        try
        {
            return await base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
        }
        // Within a statement the one, at the opening or the commit the other.
        catch (Exception fault) when ((fault as SqliteException ?? fault.InnerException) is SqliteException cause
            && NotWrittenException.Of(cause, Database.GetDbConnection().DataSource) is { } notWritten)
        {
            throw notWritten;
        }
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) => StoredValues.Configure(configurationBuilder);

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.ApplyConfigurationsFromAssembly(typeof(GigRigDb).Assembly);
        Thing<DeviceRow>(modelBuilder);
        Thing<BoardRow>(modelBuilder);
        Thing<SupplyRow>(modelBuilder);
        Thing<AmpRow>(modelBuilder);
        Thing<OffBoardRow>(modelBuilder);
        Thing<LeadRow>(modelBuilder);
        Thing<InstrumentRow>(modelBuilder);
        Thing<RoleRow>(modelBuilder);
        Thing<EventTypeRow>(modelBuilder);
        Thing<RigRow>(modelBuilder);
        Owned<AdaptersRow>(modelBuilder);
        Owned<GearPhotoRow>(modelBuilder);
        Owned<RigVersionRow>(modelBuilder);
        Owned<ShareLinkRow>(modelBuilder);
    }

    private void Thing<TRow>(ModelBuilder model)
        where TRow : ThingRow
    {
        Owned<TRow>(model);
        model.Entity<TRow>().HasQueryFilter(DeletedFilter, row => row.DeletedUtc == null);
    }

    // Here and not in the configurations: a filter must name the context it runs in.
    private void Owned<TRow>(ModelBuilder model)
        where TRow : OwnedRow =>
        model.Entity<TRow>().HasQueryFilter(OwnerFilter, row => row.OwnerId == OwnerId);
}
