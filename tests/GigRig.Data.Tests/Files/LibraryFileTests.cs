using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using GigRig.Data.Files;
using GigRig.Data.Tests.Owners;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using Microsoft.EntityFrameworkCore;

namespace GigRig.Data.Tests.Files;

public sealed class LibraryFileTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public Task Any_library_exported_and_imported_elsewhere_exports_the_same() => AnyLibrary.Content.SampleAsync(
        async content =>
        {
            await using var first = await LibraryOnDisk.NewAsync();
            await ImportAsync(first, LibraryText.Write(content));
            var text = await first.File.ExportAsync(Cancel);

            await using var second = await LibraryOnDisk.NewAsync();
            await ImportAsync(second, text);

            Assert.Equal(text, await second.File.ExportAsync(Cancel));
        },
        iter: 10,
        threads: 1);

    [Fact]
    public async Task Importing_twice_changes_nothing()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await Belongings.PutAsync(library, Cancel);
        var text = await library.File.ExportAsync(Cancel);
        var rows = Belongings.Rows(library);

        var preview = await PreviewAsync(library, text);
        await library.File.ImportAsync(preview, Cancel);

        // Everything but the deleted device and the share link.
        Assert.Equal((0, 0, 11), (preview.Added, preview.Changed, preview.Same));
        Assert.Equal(rows, Belongings.Rows(library));
    }

    [Fact]
    public async Task A_preview_says_what_would_happen_and_writes_nothing()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var echo = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        var fuzz = await library.Gear.AddAsync(A.Device("fuzz"), new(), Cancel);
        var gone = await library.Gear.AddAsync(A.Device("gone"), new(), Cancel);
        var text = await library.File.ExportAsync(Cancel);
        await library.Gear.SaveAsync(echo with { Item = echo.Item with { Ownership = new(GearStatus.LentOut) } }, Cancel);
        await library.Gear.DeleteAsync(gone.Id, gone.Version, Cancel);
        var rows = Belongings.Rows(library);

        var preview = await PreviewAsync(library, text);

        Assert.Equal(
            [
                new(ImportChange.Changed, "device \"echo\"", 2),
                new(ImportChange.Same, "device \"fuzz\"", fuzz.Version),
                new(ImportChange.Added, "device \"gone\"", 2),
            ],
            preview.Lines);
        Assert.Equal(rows, Belongings.Rows(library));

        await library.File.ImportAsync(preview, Cancel);
        Assert.Equal(GearStatus.Ready, (await library.Gear.FindAsync<Device>(echo.Id, Cancel))!.Item.Ownership.Status);
        Assert.NotNull(await library.Gear.FindAsync<Device>(gone.Id, Cancel));
    }

    [Fact]
    public async Task A_file_that_an_editor_marked_as_UTF_8_is_read_like_any_other()
    {
        await using var library = await LibraryOnDisk.NewAsync();

        await ImportAsync(library, "\uFEFF" + """{"format":"gig-library/1","roles":[{"key":"bird-song","title":"Birds"}]}""");

        Assert.Single(await library.Roles.AllAsync(Cancel));
    }

    [Fact]
    public async Task An_id_is_kept_even_if_it_is_all_noughts()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        const string text = """{"format":"gig-library/1","leads":[{"id":"00000000-0000-0000-0000-000000000000","name":"good","kind":"patch","length":150}]}""";

        await ImportAsync(library, text);

        var again = await PreviewAsync(library, text);
        Assert.Equal((0, 0, 1), (again.Added, again.Changed, again.Same));
    }

    [Fact]
    public async Task What_is_here_and_not_in_the_file_stays()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var echo = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        await library.Gear.SaveAdaptersAsync(new(Guid.Empty, 0, new(Reverse: 2)), Cancel);

        await ImportAsync(library, """{"format":"gig-library/1"}""");

        Assert.Equal([echo], await library.Gear.DevicesAsync(Cancel));
        Assert.Equal(2, (await library.Gear.AdaptersAsync(Cancel)).Item.Reverse);
    }

    [Fact]
    public async Task A_file_from_which_what_is_private_was_taken_out_leaves_what_is_kept_here_alone()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var echo = await library.Gear.AddAsync(A.Device("echo"), new(GearStatus.InRepair, "crackles", 9600) { Tags = ["tour"] }, Cancel);
        var json = JsonNode.Parse(await library.File.ExportAsync(Cancel))!.AsObject();
        json.Remove("ownership");
        json["devices"]![0]!["width"] = 71;

        await ImportAsync(library, json.ToJsonString());

        var now = (await library.Gear.FindAsync<Device>(echo.Id, Cancel))!.Item;
        Assert.Equal((71, echo.Item.Ownership), (now.Thing.Size.Width.Value, now.Ownership));

        json["ownership"] = new JsonArray();
        await ImportAsync(library, json.ToJsonString());
        Assert.Equal(new Ownership(), (await library.Gear.FindAsync<Device>(echo.Id, Cancel))!.Item.Ownership);
    }

    [Fact]
    public async Task One_bad_thing_refuses_the_whole_file()
    {
        await using var library = await LibraryOnDisk.NewAsync();

        var preview = await PreviewAsync(library, """
            {"format":"gig-library/1","leads":[
              {"id":"018f6f0e-8d3c-7a10-9c55-2f3b6a1d4e77","name":"good","kind":"patch","length":150},
              {"id":"018f6f0e-8d3c-7a10-9c55-2f3b6a1d4e78","name":"bad","kind":"patch","length":0}]}
            """);

        var complaint = Assert.Single(preview.Complaints);
        Assert.Equal(
            ("/leads/1/length", "0", "1 to 100000 mm", "/leads/1: The length of lead bad is 0 mm; give 1 to 100000 mm."),
            (complaint.Path, complaint.Value, complaint.Limit, complaint.Message));
        Assert.Empty(preview.Lines);
        await Assert.ThrowsAsync<ArgumentException>(() => library.File.ImportAsync(preview, Cancel));
        Assert.Empty(await library.Gear.LeadsAsync(Cancel));
    }

    [Fact]
    public async Task A_failure_half_way_leaves_nothing_behind()
    {
        await using var source = await LibraryOnDisk.NewAsync();
        await Belongings.PutAsync(source, Cancel);
        var text = await source.File.ExportAsync(Cancel);
        await using var library = await LibraryOnDisk.NewAsync();
        await using (var db = library.Database())
            await db.Database.ExecuteSqlRawAsync("CREATE TRIGGER no_rigs BEFORE INSERT ON \"Rigs\" BEGIN SELECT RAISE(ABORT, 'no room'); END", Cancel);
        var preview = await PreviewAsync(library, text);

        await Assert.ThrowsAsync<DbUpdateException>(() => library.File.ImportAsync(preview, Cancel));

        Assert.Empty(Belongings.Rows(library));
    }

    [Fact]
    public async Task An_import_after_the_library_was_changed_is_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var echo = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);
        var preview = await PreviewAsync(library, await library.File.ExportAsync(Cancel));
        await library.Gear.SaveAsync(echo with { Item = echo.Item with { Ownership = new(Note: "new switch") } }, Cancel);

        await Assert.ThrowsAsync<LibraryChangedException>(() => library.File.ImportAsync(preview, Cancel));

        Assert.Equal("new switch", (await library.Gear.FindAsync<Device>(echo.Id, Cancel))!.Item.Ownership.Note);
    }

    [Fact]
    public async Task An_id_that_belongs_to_another_kind_here_is_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var echo = await library.Gear.AddAsync(A.Device("echo"), new(), Cancel);

        var preview = await PreviewAsync(library, $$"""{"format":"gig-library/1","leads":[{"id":"{{echo.Id}}","name":"patch","kind":"patch","length":150}]}""");

        Assert.Equal($"/leads/0/id is {echo.Id}, which belongs to one of the devices here. Give this one another id.", Assert.Single(preview.Complaints).Message);
    }

    [Fact]
    public async Task A_role_is_known_by_its_key()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var mine = await library.Roles.AddAsync(new(new("bird-song"), "Bird song"), Cancel);

        await ImportAsync(library, """{"format":"gig-library/1","roles":[{"key":"bird-song","title":"Birds"}]}""");

        Assert.Equal([new(mine.Id, 2, new(new("bird-song"), "Birds"))], await library.Roles.AllAsync(Cancel));
    }

    [Fact]
    public async Task No_file_is_made_that_could_not_be_read_in_again()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        for (var bulk = 0; bulk < 6; bulk++)
            await library.Batch.AddAsync(Enumerable.Range(0, bulk < 5 ? 1000 : 1).Select(_ => ((object)A.Lead(), new Ownership())), Cancel);

        var refusal = await Assert.ThrowsAsync<LibraryTooLargeException>(() => library.File.ExportAsync(Cancel));

        Assert.Equal(
            "The library has 5001 leads, and a library file that can be read in again has at most 5000 of a kind. Keep a copy of the whole data folder instead, with the app stopped.",
            refusal.Message);
    }

    private static Task<ImportPreview> PreviewAsync(LibraryOnDisk library, string text) =>
        library.File.PreviewAsync(new MemoryStream(Encoding.UTF8.GetBytes(text)), Cancel);

    private static async Task ImportAsync(LibraryOnDisk library, string text)
    {
        var preview = await PreviewAsync(library, text);
        Assert.Empty(preview.Complaints);
        await library.File.ImportAsync(preview, Cancel);
    }
}
