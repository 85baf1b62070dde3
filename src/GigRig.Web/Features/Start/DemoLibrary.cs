using System.Text.Json;
using GigRig.Data;
using GigRig.Data.Files;

namespace GigRig.Web.Features.Start;

/// <summary>An invented musician's gear, to look around with. It comes in as a library file like any other, and can be taken away again.</summary>
public sealed class DemoLibrary(LibraryFile file, GearStore gear)
{
    private static readonly Lazy<IReadOnlySet<Guid>> Ids = new(ReadIds);

    /// <summary>The file, a <c>gig-library/1</c> document.</summary>
    public static Stream Open() =>
        typeof(DemoLibrary).Assembly.GetManifestResourceStream("demo-library.json") ?? throw new InvalidOperationException("The demo library is not part of this build.");

    public async Task BringInAsync()
    {
        await using var demo = Open();
        await file.ImportAsync(await file.PreviewAsync(demo));
    }

    /// <summary>The demo things that are in the library now, each with the version it has.</summary>
    public async Task<IReadOnlyList<(Guid Id, int Version)>> FindAsync()
    {
        var library = await gear.AllAsync();
        return
        [
            .. Versions(library.Devices), .. Versions(library.Boards), .. Versions(library.Supplies), .. Versions(library.Amps),
            .. Versions(library.OffBoard), .. Versions(library.Leads), .. Versions(library.Instruments),
        ];
    }

    /// <summary>Deletes the demo things and answers which, for bringing them back.</summary>
    public async Task<IReadOnlyList<Guid>> TakeAwayAsync()
    {
        var here = await FindAsync();
        foreach (var (id, version) in here)
            await gear.DeleteAsync(id, version);
        return [.. here.Select(thing => thing.Id)];
    }

    public async Task BringBackAsync(IEnumerable<Guid> ids)
    {
        foreach (var id in ids)
            await gear.RestoreAsync(id);
    }

    private static IEnumerable<(Guid Id, int Version)> Versions<T>(IEnumerable<Stored<T>> things) =>
        things.Where(thing => Ids.Value.Contains(thing.Id)).Select(thing => (thing.Id, thing.Version));

    private static IReadOnlySet<Guid> ReadIds()
    {
        using var demo = Open();
        using var document = JsonDocument.Parse(demo);
        return document.RootElement.EnumerateObject()
            .Where(member => member.Value.ValueKind == JsonValueKind.Array)
            .SelectMany(member => member.Value.EnumerateArray())
            .Select(thing => thing.GetProperty("id").GetGuid())
            .ToHashSet();
    }
}
