using System.Text;
using GigRig.Data.Files;

namespace GigRig.Data.Tests.Files;

/// <summary>Files that are wrong by accident or on purpose: each is refused whole, with the place and what to do, and nothing is written.</summary>
public sealed class HostileFilesTests
{
    private const string Id = "018f6f0e-8d3c-7a10-9c55-2f3b6a1d4e77";
    private const string Other = "018f6f0e-8d3c-7a10-9c55-2f3b6a1d4e78";
    private const string Lead = $$"""{"id":"{{Id}}","name":"patch","kind":"patch","length":150}""";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("", "", "not JSON")]
    [InlineData("hello", "", "not JSON")]
    [InlineData("[]", "", "give an object")]
    [InlineData("{}", "/format", "/format is missing. Add it.")]
    [InlineData("""{"format":"gig-library/2"}""", "/format", "only \"gig-library/1\" can be read")]
    [InlineData("""{"format":"gig-library/1","gear":[]}""", "/gear", "/gear is not a member of this document")]
    [InlineData("""{"format":"gig-library/1","device":[]}""", "/device", "Did you mean \"devices\"?")]
    [InlineData("""{"format":"gig-library/1","leads":[],"leads":[]}""", "/leads", "/leads is given twice")]
    [InlineData("""{"format":"gig-library/1","leads":{}}""", "/leads", "give a list")]
    [InlineData("""{"format":"gig-library/1","leads":[7]}""", "/leads/0", "give an object")]
    [InlineData($$"""{"format":"gig-library/1","leads":[{{Lead}},{{Lead}}]}""", "/leads/1/id", "which is the id of /leads/0 already")]
    [InlineData($$"""{"format":"gig-library/1","leads":[{{Lead}}],"instruments":[{"id":"{{Id}}","name":"Red","kind":"guitar"}]}""", "/instruments/0/id", "which is the id of /leads/0 already")]
    [InlineData("""{"format":"gig-library/1","leads":[{"id":"7","name":"patch","kind":"patch","length":150}]}""", "/leads/0/id", "must be a GUID")]
    [InlineData($$"""{"format":"gig-library/1","leads":[{"id":"{{Id}}","name":"patch","kind":"patch","length":NaN}]}""", "", "not JSON")]
    [InlineData($$"""{"format":"gig-library/1","leads":[{"id":"{{Id}}","name":"patch","kind":"patch","length":1e999}]}""", "/leads/0/length", "give a whole number")]
    [InlineData($$"""{"format":"gig-library/1","leads":[{"id":"{{Id}}","name":"patch","kind":"patch","length":"150"}]}""", "/leads/0/length", "give a whole number")]
    [InlineData($$"""{"format":"gig-library/1","leads":[{"id":"{{Id}}","name":"patch","kind":"pach","length":150}]}""", "/leads/0/kind", "Did you mean \"patch\"?")]
    [InlineData($$"""{"format":"gig-library/1","leads":[{"id":"{{Id}}","name":"a\u0000b","kind":"patch","length":150}]}""", "/leads/0/name", "control character")]
    [InlineData($$"""{"format":"gig-library/1","leads":[{{Lead}}],"ownership":[{"id":"{{Other}}","note":"whose?"}]}""", "/ownership/0/id", "nothing in this file has that id")]
    [InlineData($$"""{"format":"gig-library/1","leads":[{{Lead}}],"ownership":[{"id":"{{Id}}","valueCents":-5}]}""", "/ownership/0/valueCents", "give 0 to 1000000000")]
    [InlineData("""{"format":"gig-library/1","roles":[{"key":"Bird Song","title":"Birds"}]}""", "/roles/0/key", "is not well formed")]
    [InlineData("""{"format":"gig-library/1","roles":[{"key":"a","title":"A"},{"key":"a","title":"B"}]}""", "/roles/1/key", "which is the key of /roles/0 already")]
    public async Task A_wrong_file_is_refused_with_the_place_and_what_to_do(string text, string path, string message)
    {
        await using var library = await LibraryOnDisk.NewAsync();

        var preview = await library.File.PreviewAsync(new MemoryStream(Encoding.UTF8.GetBytes(text)), Cancel);

        Assert.False(preview.CanImport);
        Assert.Contains(preview.Complaints, complaint => complaint.Path == path && complaint.Message.Contains(message));
        await Assert.ThrowsAsync<ArgumentException>(() => library.File.ImportAsync(preview, Cancel));
    }

    [Theory]
    [InlineData("yesterday", "rig-problem/1", 10, "/rigs/0/savedUtc", "must be a time in UTC")]
    [InlineData("2027-03-06T20:15:00+01:00", "rig-problem/1", 10, "/rigs/0/savedUtc", "must be a time in UTC")]
    [InlineData("2027-03-06T20:15:00Z", "rig-problem/9", 10, "/rigs/0/problem/format", "only \"rig-problem/1\" can be read")]
    [InlineData("2027-03-06T20:15:00Z", "rig-problem/1", 0, "/rigs/0/problem/board/width", "")]
    [InlineData("2027-03-06T20:15:00Z", "rig-problem/1", 10, "/rigs/0/rig", "ghost")]
    public async Task A_saved_rig_is_checked_with_its_problem(string time, string format, int width, string path, string message)
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var text = $$"""
            {"format":"gig-library/1","rigs":[{"id":"{{Id}}","name":"Jam","savedUtc":"{{time}}",
              "problem":{"format":"{{format}}","board":{"width":{{width}},"depth":10},"event":{} },
              "rig":{"format":"rig/1","placements":[{"id":"ghost","x":0,"y":0}],"chain":{"front":[],"loop":[]} } }]}
            """;

        var preview = await library.File.PreviewAsync(new MemoryStream(Encoding.UTF8.GetBytes(text)), Cancel);

        Assert.Contains(preview.Complaints, complaint => complaint.Path == path && complaint.Message.Contains(message));
    }

    [Theory]
    [InlineData("leads", "/leads/0/id")]
    [InlineData("events", "/events/0/id")]
    [InlineData("rigs", "/rigs/0/id")]
    public async Task Two_things_with_one_id_are_refused_whatever_their_kind(string kind, string path)
    {
        await using var library = await LibraryOnDisk.NewAsync();
        const string id = "018f6f0e-8d3c-7a10-9c55-2f3b6a1d4e77";
        var second = kind switch
        {
            "leads" => $$"""{"id":"{{id}}","name":"good","kind":"patch","length":150}""",
            "events" => $$"""{"id":"{{id}}","event":{"name":"Jam"} }""",
            _ => $$"""{"id":"{{id}}","name":"Jam","savedUtc":"2027-03-06T20:15:00Z","problem":{"format":"rig-problem/1","board":{"width":100,"depth":100},"event":{} },"rig":{"format":"rig/1","placements":[],"chain":{"front":[],"loop":[]} } }""",
        };
        var device = $$"""{"id":"{{id}}","name":"echo","width":70,"depth":120}""";

        var within = await PreviewAsync($$"""{"format":"gig-library/1","devices":[{{device}}],"{{kind}}":[{{second}}]}""");
        Assert.Equal($"{path} is {id}, which is the id of /devices/0 already. Give one of them another id.", Assert.Single(within.Complaints).Message);

        await library.File.ImportAsync(await PreviewAsync($$"""{"format":"gig-library/1","devices":[{{device}}]}"""), Cancel);
        var against = await PreviewAsync($$"""{"format":"gig-library/1","{{kind}}":[{{second}}]}""");
        Assert.Equal($"{path} is {id}, which belongs to one of the devices here. Give this one another id.", Assert.Single(against.Complaints).Message);

        Task<ImportPreview> PreviewAsync(string text) => library.File.PreviewAsync(new MemoryStream(Encoding.UTF8.GetBytes(text)), Cancel);
    }

    [Fact]
    public async Task A_file_nested_ten_thousand_deep_is_refused()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var text = """{"format":"gig-library/1","devices":""" + new string('[', 10_000) + new string(']', 10_000) + "}";

        var preview = await library.File.PreviewAsync(new MemoryStream(Encoding.UTF8.GetBytes(text)), Cancel);

        Assert.Contains("nests deeper than 32 levels", Assert.Single(preview.Complaints).Message);
    }

    [Fact]
    public async Task A_file_beyond_the_size_limit_is_refused_without_being_read_to_its_end()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        await using var endless = new EndlessStream();

        var preview = await library.File.PreviewAsync(endless, Cancel);

        Assert.Equal("The file is larger than 100 MB. Import it in parts, or check that it is a library file.", Assert.Single(preview.Complaints).Message);
        Assert.InRange(endless.Given, LibraryFile.MaxBytes, LibraryFile.MaxBytes + 100_000);
    }

    [Fact]
    public async Task A_file_with_more_of_a_kind_than_anybody_owns_is_refused_soon()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var text = $$"""{"format":"gig-library/1","leads":[{{string.Join(',', Enumerable.Repeat(Lead, 5001))}}]}""";

        var preview = await library.File.PreviewAsync(new MemoryStream(Encoding.UTF8.GetBytes(text)), Cancel);

        Assert.Equal("/leads has 5001 items, but a file may have at most 5000 of a kind. Import it in parts.", Assert.Single(preview.Complaints).Message);
    }

    [Fact]
    public async Task Of_very_many_faults_two_hundred_are_listed_and_the_rest_counted()
    {
        await using var library = await LibraryOnDisk.NewAsync();
        var text = $$"""{"format":"gig-library/1","leads":[{{string.Join(',', Enumerable.Repeat(Lead, 301))}}]}""";

        var preview = await library.File.PreviewAsync(new MemoryStream(Encoding.UTF8.GetBytes(text)), Cancel);

        Assert.Equal(201, preview.Complaints.Count);
        Assert.Equal("There are 100 faults more. Mend these first, then look again.", preview.Complaints[200].Message);
    }
}
