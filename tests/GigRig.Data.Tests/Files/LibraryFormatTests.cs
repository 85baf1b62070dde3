using System.Text;
using System.Text.Json;
using GigRig.Data.Files;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;

namespace GigRig.Data.Tests.Files;

/// <summary>What <c>docs/file-format.md</c> says is what is written and read.</summary>
public sealed class LibraryFormatTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_documented_example_can_be_imported_and_has_every_part_of_a_file()
    {
        using var reader = new StreamReader(typeof(LibraryFormatTests).Assembly.GetManifestResourceStream("file-format.md")!);
        var example = (await reader.ReadToEndAsync(Cancel)).Split("```json\n")[1].Split("```")[0];
        await using var library = await LibraryOnDisk.NewAsync();

        var preview = await library.File.PreviewAsync(new MemoryStream(Encoding.UTF8.GetBytes(example)), Cancel);
        Assert.Empty(preview.Complaints);
        await library.File.ImportAsync(preview, Cancel);

        var exported = await library.File.ExportAsync(Cancel);
        Assert.Equal(Members(exported), Members(example));
        Assert.Equal(typeof(LibraryDocument).GetProperties().Select(property => JsonNamingPolicy.CamelCase.ConvertName(property.Name)), Members(example));
    }

    [Fact]
    public async Task The_document_names_every_word_that_a_member_may_be()
    {
        using var reader = new StreamReader(typeof(LibraryFormatTests).Assembly.GetManifestResourceStream("file-format.md")!);
        var text = await reader.ReadToEndAsync(Cancel);

        Assert.All(
            Enum.GetNames<GearStatus>().Concat(Enum.GetNames<Guess>()).Concat(Enum.GetNames<OutletJoin>()),
            word => Assert.Contains($"`\"{JsonNamingPolicy.CamelCase.ConvertName(word)}\"`", text));
    }

    [Fact]
    public async Task What_a_rig_was_planned_from_takes_one_line_of_the_file()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await library.Rigs.AddAsync("Jam", "", A.Draft().With(A.Device("echo"), A.Device("fuzz")).Problem(), A.Rig(), Cancel);

        var lines = (await library.File.ExportAsync(Cancel)).Split('\n');

        Assert.Single(lines, line => line.Contains("\"problem\": {\"format\":\"rig-problem/1\"", StringComparison.Ordinal) && line.Contains("echo", StringComparison.Ordinal) && line.Contains("fuzz", StringComparison.Ordinal));
    }

    private static IEnumerable<string> Members(string json)
    {
        using var document = JsonDocument.Parse(json);
        return [.. document.RootElement.EnumerateObject().Select(member => member.Name)];
    }
}
