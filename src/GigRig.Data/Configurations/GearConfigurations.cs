using GigRig.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GigRig.Data.Configurations;

// Scalars are columns; the lists inside a thing are never asked for on their own and are JSON columns.

internal sealed class DeviceConfiguration : ThingConfiguration<DeviceRow>
{
    protected override void ConfigureThing(EntityTypeBuilder<DeviceRow> builder)
    {
        builder.ComplexProperty(row => row.Size);
        builder.ComplexProperty(row => row.Power);
        builder.ComplexCollection(row => row.Jacks, jacks => jacks.ToJson());
        builder.ComplexCollection(row => row.Switches, switches => switches.ToJson());
        builder.ComplexCollection(row => row.Functions, functions => functions.ToJson());
    }
}

internal sealed class BoardConfiguration : ThingConfiguration<BoardRow>
{
    protected override void ConfigureThing(EntityTypeBuilder<BoardRow> builder)
    {
        builder.ComplexCollection(row => row.Rails, rails => rails.ToJson());
        builder.ComplexCollection(row => row.KeepOuts, keepOuts => keepOuts.ToJson());
    }
}

internal sealed class SupplyConfiguration : ThingConfiguration<SupplyRow>
{
    protected override void ConfigureThing(EntityTypeBuilder<SupplyRow> builder)
    {
        builder.ComplexProperty(row => row.Size);
        builder.ComplexProperty(row => row.Mains);
        builder.ComplexCollection(row => row.Outlets, outlets => outlets.ToJson());
    }
}

internal sealed class AmpConfiguration : ThingConfiguration<AmpRow>
{
    protected override void ConfigureThing(EntityTypeBuilder<AmpRow> builder)
    {
        builder.ComplexProperty(row => row.Mains);
        builder.ComplexCollection(row => row.Functions, functions => functions.ToJson());
    }
}

internal sealed class OffBoardConfiguration : ThingConfiguration<OffBoardRow>
{
    protected override void ConfigureThing(EntityTypeBuilder<OffBoardRow> builder) =>
        builder.ComplexCollection(row => row.Functions, functions => functions.ToJson());
}

internal sealed class LeadConfiguration : ThingConfiguration<LeadRow>
{
    protected override void ConfigureThing(EntityTypeBuilder<LeadRow> builder)
    {
    }
}

internal sealed class InstrumentConfiguration : ThingConfiguration<InstrumentRow>
{
    protected override void ConfigureThing(EntityTypeBuilder<InstrumentRow> builder)
    {
    }
}

internal sealed class GearPhotoConfiguration : IEntityTypeConfiguration<GearPhotoRow>
{
    // No foreign key: the thing is in one of seven tables. Things are never deleted for good, so no photo is left behind.
    public void Configure(EntityTypeBuilder<GearPhotoRow> builder)
    {
        builder.HasKey(row => new { row.OwnerId, row.GearId });
        builder.Property(row => row.GearId).ValueGeneratedNever();
        builder.Property(row => row.Version).IsConcurrencyToken();
    }
}
