using System.Text;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace GigRig.Data.Tests;

public sealed class RigHistoryTests
{
    private static readonly RigProblem Problem = A.Draft().With(A.Device("echo")).Problem();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_arrangement_that_was_saved_is_kept_and_renaming_is_none()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await library.Rigs.AddAsync("Jam", "", Problem, At(0), Cancel);
        library.Clock.Now += TimeSpan.FromHours(1);
        rig = await library.Rigs.RenameAsync(rig.Id, rig.Version, "Loose jam", "bring tape", Cancel);
        library.Clock.Now += TimeSpan.FromHours(1);
        rig = await MoveAsync(library, rig, 50);

        var versions = await library.Rigs.VersionsAsync(rig.Id, Cancel);
        var first = await library.Rigs.FindVersionAsync(rig.Id, 1, Cancel);

        Assert.Equal([3, 1], versions.Select(version => version.Number));
        Assert.Equal(new(3, "Loose jam", 1, rig.Item.SavedUtc), versions[0]);
        Assert.Equal(("Jam", "bring tape"), (first!.Name, first.Note));
        Assert.Equal(At(0), first.Rig);
        Assert.Equal(Problem.Draft, first.Problem.Draft);
        Assert.Null(await library.Rigs.FindVersionAsync(rig.Id, 2, Cancel));
    }

    [Fact]
    public async Task Going_back_saves_the_old_arrangement_anew_and_loses_nothing()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await MoveAsync(library, await library.Rigs.AddAsync("Jam", "tape", Problem, At(0), Cancel), 50);
        rig = await library.Rigs.RenameAsync(rig.Id, rig.Version, "Loose jam", "tape", Cancel);
        library.Clock.Now += TimeSpan.FromHours(1);

        var back = await library.Rigs.GoBackAsync(rig.Id, rig.Version, 1, Cancel);

        Assert.Equal(("Loose jam", "tape", library.Clock.Now.UtcDateTime), (back.Item.Name, back.Item.Note, back.Item.SavedUtc));
        Assert.Equal(At(0), back.Item.Rig);
        Assert.Equal([4, 2, 1], (await library.Rigs.VersionsAsync(rig.Id, Cancel)).Select(version => version.Number));
        Assert.Equal(At(50), (await library.Rigs.FindVersionAsync(rig.Id, 2, Cancel))!.Rig);
        await Assert.ThrowsAsync<StaleVersionException>(() => library.Rigs.GoBackAsync(rig.Id, rig.Version, 1, Cancel));
        await Assert.ThrowsAsync<ArgumentException>(() => library.Rigs.GoBackAsync(rig.Id, back.Version, 77, Cancel));
    }

    [Fact]
    public async Task The_oldest_versions_go_when_there_are_too_many_but_not_one_that_a_link_shows()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await MoveAsync(library, await library.Rigs.AddAsync("Jam", "", Problem, At(0), Cancel), 1);
        var link = await library.Links.CreateAsync(rig.Id, new("band", Frozen: 2), Cancel);
        for (var x = 2; x < RigVersion.MostKept + 5; x++)
            rig = await MoveAsync(library, rig, x);

        var numbers = (await library.Rigs.VersionsAsync(rig.Id, Cancel)).Select(version => version.Number).ToList();

        Assert.Equal(RigVersion.MostKept + 1, numbers.Count);
        Assert.Equal((rig.Version, 2), (numbers[0], numbers[^1]));
        Assert.Equal(rig.Version - RigVersion.MostKept + 1, numbers[^2]);
        Assert.Equal(At(1), (await library.Shared.FindAsync(link, Cancel))!.Rig);
    }

    [Fact]
    public async Task A_deleted_rig_has_no_history_until_it_is_brought_back()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await library.Rigs.AddAsync("Jam", "", Problem, At(0), Cancel);

        await library.Rigs.DeleteAsync(rig.Id, rig.Version, Cancel);
        Assert.Empty(await library.Rigs.VersionsAsync(rig.Id, Cancel));
        Assert.Null(await library.Rigs.FindVersionAsync(rig.Id, 1, Cancel));

        await library.Rigs.RestoreAsync(rig.Id, Cancel);
        Assert.Single(await library.Rigs.VersionsAsync(rig.Id, Cancel));
    }

    [Fact]
    public async Task A_rig_from_before_there_was_a_history_begins_one_with_what_it_is()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var rig = await library.Rigs.RenameAsync(await AddedAsync(library), 1, "Loose jam", "", Cancel);
        await using (var db = library.Database())
        {
            await db.GetService<IMigrator>().MigrateAsync("Library", Cancel);
            await db.Database.ExecuteSqlRawAsync("UPDATE \"ShareLinks\" SET \"LastOpenedUtc\" = '2027-03-05 20:15:59'", Cancel);
        }

        await library.CloseAsync();
        await using var updated = LibraryOnDisk.Unopened(library.Folder.Path);
        await updated.OpenAsync();

        Assert.Equal(new(2, "Loose jam", 1, rig.Item.SavedUtc), Assert.Single(await updated.Rigs.VersionsAsync(rig.Id, Cancel)));
        Assert.Equal(new DateOnly(2027, 3, 5), Assert.Single(await updated.Links.ForRigAsync(rig.Id, Cancel)).LastOpenedOn);
        Assert.Equal([3, 2], await MovedAsync(updated, rig));

        static async Task<Guid> AddedAsync(LibraryOnDisk library)
        {
            var added = await library.Rigs.AddAsync("Jam", "", Problem, At(0), Cancel);
            await library.Links.CreateAsync(added.Id, new("band"), Cancel);
            return added.Id;
        }

        static async Task<IEnumerable<int>> MovedAsync(LibraryOnDisk library, Stored<SavedRig> rig)
        {
            await MoveAsync(library, rig, 70);
            return (await library.Rigs.VersionsAsync(rig.Id, Cancel)).Select(version => version.Number);
        }
    }

    [Fact]
    public async Task Reading_a_library_file_in_begins_a_history_too()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await using var copy = await LibraryOnDisk.NewAsync();
        var rig = await library.Rigs.AddAsync("Jam", "", Problem, At(0), Cancel);
        using var file = new MemoryStream(Encoding.UTF8.GetBytes(await library.File.ExportAsync(Cancel)));

        await copy.File.ImportAsync(await copy.File.PreviewAsync(file, Cancel), Cancel);

        Assert.Equal(At(0), (await copy.Rigs.FindVersionAsync(rig.Id, 1, Cancel))!.Rig);
    }

    private static Rig At(int x) => A.Rig().Placing("echo", x, 0);

    private static Task<Stored<SavedRig>> MoveAsync(LibraryOnDisk library, Stored<SavedRig> rig, int x) =>
        library.Rigs.SaveAsync(rig with { Item = rig.Item with { Rig = At(x) } }, Cancel);
}
