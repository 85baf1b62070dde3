using GigRig.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GigRig.Data.Configurations;

internal sealed class EventTypeConfiguration : ThingConfiguration<EventTypeRow>
{
    protected override void ConfigureThing(EntityTypeBuilder<EventTypeRow> builder)
    {
        builder.ComplexCollection(row => row.Needs, needs => needs.ToJson());
        builder.ComplexCollection(row => row.Sounds, sounds => sounds.ToJson());
    }
}

internal sealed class RoleConfiguration : ThingConfiguration<RoleRow>
{
    // A deleted role must not stand in the way of a new one with the same key.
    protected override void ConfigureThing(EntityTypeBuilder<RoleRow> builder) =>
        builder.HasIndex(row => new { row.OwnerId, row.Key }).IsUnique().HasFilter("\"DeletedUtc\" IS NULL");
}

internal sealed class RigConfiguration : ThingConfiguration<RigRow>
{
    protected override void ConfigureThing(EntityTypeBuilder<RigRow> builder)
    {
    }
}

internal sealed class RigVersionConfiguration : IEntityTypeConfiguration<RigVersionRow>
{
    public void Configure(EntityTypeBuilder<RigVersionRow> builder)
    {
        builder.HasKey(row => new { row.OwnerId, row.RigId, row.Number });
        builder.Property(row => row.Number).ValueGeneratedNever();
        builder.Property(row => row.Version).IsConcurrencyToken();
        builder.Ignore(row => row.Title);
        builder.HasOne(row => row.Rig)
            .WithMany()
            .HasForeignKey(row => new { row.OwnerId, row.RigId })
            .OnDelete(DeleteBehavior.Cascade);
    }
}

internal sealed class AdaptersConfiguration : IEntityTypeConfiguration<AdaptersRow>
{
    public void Configure(EntityTypeBuilder<AdaptersRow> builder)
    {
        builder.HasKey(row => row.OwnerId);
        builder.Property(row => row.OwnerId).ValueGeneratedNever();
        builder.Property(row => row.Version).IsConcurrencyToken();
    }
}

internal sealed class ShareLinkConfiguration : IEntityTypeConfiguration<ShareLinkRow>
{
    public void Configure(EntityTypeBuilder<ShareLinkRow> builder)
    {
        builder.HasKey(row => new { row.OwnerId, row.Id });
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Version).IsConcurrencyToken();
        builder.HasIndex(row => row.TokenHash).IsUnique();
        builder.HasOne(row => row.Rig)
            .WithMany()
            .HasForeignKey(row => new { row.OwnerId, row.RigId })
            .OnDelete(DeleteBehavior.Cascade);
        builder.Ignore(row => row.Content);
    }
}
