using System.Globalization;
using System.Text;
using GigRig.Data.Files;
using GigRig.Data.Tests.Owners;
using GigRig.Data.Tests.Troubles;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests.Files;

/// <summary>An import happens wholly or not at all, whatever ends it.</summary>
public sealed class CutOffImportTests
{
    private const string FolderKey = "GIGRIG_TEST_IMPORTED_FOLDER";
    private const string CommandKey = "GIGRIG_TEST_IMPORT_KILLED_AT";

    // Of the file that is imported, beside one of everything else.
    private const int Devices = 60;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task On_a_disk_that_fills_up_at_any_page_nothing_comes_in_and_the_same_preview_can_be_imported_once_there_is_room()
    {
        var text = await FileAsync();
        var disk = new FullDisk();
        await using var library = await LibraryOnDisk.NewAsync(disk);
        await library.Gear.AddAsync(A.Device("mine"), new(), Cancel);
        var before = Belongings.Rows(library);
        var preview = await PreviewAsync(library, text);
        var refused = 0;
        for (; ; refused++)
        {
            disk.Free = refused;
            if (await Record.ExceptionAsync(() => library.File.ImportAsync(preview, Cancel)) is not { } fault)
                break;
            Assert.Contains("is full. Free some space", Assert.IsType<NotWrittenException>(fault).Message);
            Assert.Equal(before, Belongings.Rows(library));
        }

        Assert.InRange(refused, 5, 1000);
        Assert.Equal(Devices + 2, (await library.Gear.DevicesAsync(Cancel)).Count);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(70)]
    public async Task Killed_before_any_command_of_it_nothing_came_in_and_the_file_can_be_imported_again(int command)
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await library.Gear.AddAsync(A.Device("mine"), new(), Cancel);
        await library.CloseAsync();
        await File.WriteAllTextAsync(Import(library.Folder.Path), await FileAsync(), Cancel);
        var before = Belongings.Rows(library.Folder);

        using var killed = SecondProcess.Start(GetType(), nameof(Imports_until_it_is_killed), (FolderKey, library.Folder.Path), (CommandKey, $"{command}"));

        Assert.True(await killed.IsKilledAsync(Cancel));
        await using var after = library.Again();
        await after.OpenAsync();
        Assert.Equal(before, Belongings.Rows(library.Folder));
        await after.File.ImportAsync(await PreviewAsync(after, await File.ReadAllTextAsync(Import(library.Folder.Path), Cancel)), Cancel);
        Assert.Equal(Devices + 2, (await after.Gear.DevicesAsync(Cancel)).Count);
    }

    /// <summary>The victim of the test above.</summary>
    [Fact(Explicit = true)]
    public async Task Imports_until_it_is_killed()
    {
        if (Environment.GetEnvironmentVariable(FolderKey) is not { } folder)
            return;
        var at = int.Parse(Environment.GetEnvironmentVariable(CommandKey)!, CultureInfo.InvariantCulture);
        await using var library = LibraryOnDisk.On(folder, new KilledAt(at, text => text.Contains("INSERT INTO", StringComparison.Ordinal)));
        await library.OpenAsync();
        await library.File.ImportAsync(await PreviewAsync(library, await File.ReadAllTextAsync(Import(folder), Cancel)), Cancel);
    }

    private static async Task<string> FileAsync()
    {
        await using var source = await LibraryOnDisk.NewAsync();
        await Belongings.PutAsync(source, Cancel);
        for (var i = 0; i < Devices; i++)
            await source.Gear.AddAsync(A.Device($"device {i}"), new Ownership(Note: new string('n', 300)), Cancel);
        return await source.File.ExportAsync(Cancel);
    }

    private static Task<ImportPreview> PreviewAsync(LibraryOnDisk library, string text) =>
        library.File.PreviewAsync(new MemoryStream(Encoding.UTF8.GetBytes(text)), Cancel);

    private static string Import(string folder) => Path.Combine(folder, "import.json");
}
