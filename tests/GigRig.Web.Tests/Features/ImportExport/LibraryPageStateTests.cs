using System.Text;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using GigRig.Web.Features.ImportExport;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.ImportExport;

public sealed class LibraryPageStateTests : IAsyncLifetime
{
    private Library library = null!;
    private LibraryPageState state = null!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        state = new(library.File);
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public async Task A_file_is_looked_at_before_anything_changes()
    {
        await LookAtAsync(await OthersLibraryAsync());

        Assert.Equal((1, 0, 0), (state.Preview!.Added, state.Preview.Changed, state.Preview.Same));
        Assert.Empty(await library.Gear.DevicesAsync(Cancel));
    }

    [Fact]
    public async Task What_was_looked_at_comes_in_on_the_owners_word()
    {
        await LookAtAsync(await OthersLibraryAsync());

        await state.ImportAsync();

        Assert.Equal("Imported theirs.json: 1 added, 0 changed, 0 left as they were.", state.Done);
        Assert.Equal("Tape echo", Assert.Single(await library.Gear.DevicesAsync(Cancel)).Item.Thing.Name);
        Assert.Null(state.Preview);
    }

    [Fact]
    public async Task A_file_that_makes_no_sense_is_refused_with_reasons()
    {
        await LookAtAsync("""{"format":"gig-library/1","devices":[{"id":"018f6f0e-0001-7000-8000-000000000001","name":"Echo","width":0,"depth":120,"height":55}]}""");

        Assert.False(state.Preview!.CanImport);
        Assert.Contains(state.Preview.Complaints, complaint => complaint.Path == "/devices/0/width");
        await state.ImportAsync();
        Assert.Empty(state.Done);
    }

    [Fact]
    public async Task A_library_that_changed_since_the_look_is_left_alone()
    {
        var theirs = await OthersLibraryAsync();
        await LookAtAsync(theirs);
        await new LibraryPageState(library.File).BothAsync(theirs);

        await state.ImportAsync();

        Assert.Contains("nothing was imported", state.Fault);
        Assert.Null(state.Preview);
    }

    [Fact]
    public async Task A_file_that_cannot_be_read_says_so()
    {
        await state.LookAtAsync("broken.json", () => new BrokenStream(), Cancel);

        Assert.Equal("broken.json could not be read. The line went dead.", state.Fault);
    }

    [Fact]
    public async Task A_file_that_is_larger_than_is_read_says_so()
    {
        await state.LookAtAsync("film.json", () => throw new IOException("It is larger than that."), Cancel);

        Assert.Equal("film.json could not be read. It is larger than that.", state.Fault);
    }

    private Task LookAtAsync(string text) => state.LookAtAsync("theirs.json", () => new MemoryStream(Encoding.UTF8.GetBytes(text)), Cancel);

    private static async Task<string> OthersLibraryAsync()
    {
        await using var other = await Library.OpenAsync();
        await other.WithAsync(A.Device("echo").Doing("delay") with { Name = "Tape echo" });
        return await other.File.ExportAsync(Cancel);
    }

    private sealed class BrokenStream : MemoryStream
    {
        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) => throw new IOException("The line went dead.");
    }
}

file static class Importing
{
    public static async Task BothAsync(this LibraryPageState state, string text)
    {
        await state.LookAtAsync("theirs.json", () => new MemoryStream(Encoding.UTF8.GetBytes(text)));
        await state.ImportAsync();
    }
}
