using GigRig.Data.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace GigRig.Data.Tests;

public sealed class GigRigDbTests
{
    public static TheoryData<string> Tables { get; } = new(Model().GetEntityTypes().Select(type => type.Name));

    [Fact]
    public void The_migrations_lead_to_the_model()
    {
        using var db = new GigRigDbDesign().CreateDbContext([]);

        Assert.False(db.Database.HasPendingModelChanges());
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_table_is_fenced_by_owner_in_its_rows_and_its_key_and_guards_against_overwriting(string table)
    {
        var type = Model().FindEntityType(table)!;

        Assert.True(typeof(OwnedRow).IsAssignableFrom(type.ClrType));
        Assert.NotNull(type.FindDeclaredQueryFilter(GigRigDb.OwnerFilter));
        Assert.Equal(nameof(OwnedRow.OwnerId), type.FindPrimaryKey()!.Properties[0].Name);
        Assert.True(type.FindProperty(nameof(OwnedRow.Version))!.IsConcurrencyToken);
        Assert.All(type.GetForeignKeys(), key => Assert.Equal(nameof(OwnedRow.OwnerId), key.Properties[0].Name));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Whatever_can_be_deleted_is_hidden_by_a_filter(string table)
    {
        var type = Model().FindEntityType(table)!;

        Assert.Equal(
            typeof(ThingRow).IsAssignableFrom(type.ClrType),
            type.FindDeclaredQueryFilter(GigRigDb.DeletedFilter) is not null);
    }

    private static IModel Model()
    {
        using var db = new GigRigDbDesign().CreateDbContext([]);
        return db.Model;
    }
}
