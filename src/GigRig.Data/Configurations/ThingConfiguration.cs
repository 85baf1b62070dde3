using GigRig.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GigRig.Data.Configurations;

/// <summary>What the tables of all things share. The owner is part of the key, so that two owners may hold the same imported thing.</summary>
internal abstract class ThingConfiguration<TRow> : IEntityTypeConfiguration<TRow>
    where TRow : ThingRow
{
    public void Configure(EntityTypeBuilder<TRow> builder)
    {
        builder.HasKey(row => new { row.OwnerId, row.Id });
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Version).IsConcurrencyToken();
        builder.Ignore(row => row.Title);
        ConfigureThing(builder);
    }

    protected abstract void ConfigureThing(EntityTypeBuilder<TRow> builder);
}
