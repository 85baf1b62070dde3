using GigRig.Data.Owners;
using GigRig.Data.Rows;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data.Tests.Owners;

public sealed class OwnerGuardTests
{
    private static readonly Guid Other = new("0000000b-0000-0000-0000-000000000000");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_new_row_is_stamped_with_owner_version_and_time()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await using var db = library.Database();
        var row = db.Add(new InstrumentRow { Id = Guid.NewGuid(), Name = "Red", Kind = "guitar" }).Entity;

        await db.SaveChangesAsync(Cancel);

        Assert.Equal(OwnerContext.Local.OwnerId, row.OwnerId);
        Assert.Equal(1, row.Version);
        Assert.Equal(library.Clock.Now.UtcDateTime, row.CreatedUtc);
        Assert.Equal(DateTimeKind.Utc, (await db.Instruments.AsNoTracking().SingleAsync(Cancel)).ChangedUtc.Kind);
    }

    [Fact]
    public async Task A_new_row_in_another_name_is_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await using var db = library.Database();
        db.Add(new InstrumentRow { Id = Guid.NewGuid(), OwnerId = Other });

        await Assert.ThrowsAsync<ForeignOwnerException>(() => db.SaveChangesAsync(Cancel));
    }

    [Theory]
    [InlineData(EntityState.Modified)]
    [InlineData(EntityState.Deleted)]
    public async Task A_forged_row_of_another_owner_is_neither_written_nor_deleted(EntityState state)
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await using var db = library.Database();
        db.Attach(new InstrumentRow { Id = Guid.NewGuid(), OwnerId = Other, Version = 1 }).State = state;

        Assert.Throws<ForeignOwnerException>(() => db.SaveChanges());
    }

    [Fact]
    public async Task A_time_that_is_not_utc_is_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await using var db = library.Database();
        db.Add(new RigRow { Id = Guid.NewGuid(), SavedUtc = new DateTime(2027, 3, 6, 20, 0, 0, DateTimeKind.Local) });

        var fault = await Record.ExceptionAsync(() => db.SaveChangesAsync(Cancel));

        Assert.Contains("Times are stored as UTC", $"{fault}");
    }
}
