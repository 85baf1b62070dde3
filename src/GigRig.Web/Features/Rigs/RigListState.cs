using GigRig.Data;
using GigRig.Domain;
using GigRig.Web.Shared;

namespace GigRig.Web.Features.Rigs;

/// <summary>A saved rig as the list shows it.</summary>
/// <param name="Saved">Null where what is stored can't be read.</param>
/// <param name="Fault">Why it can't be read; empty where it can.</param>
public sealed record RigEntry(Stored<RigSummary> Summary, SavedRig? Saved, string Fault);

/// <summary>The saved rigs, last saved first, a page at a time: each card draws its rig, and drawings are read one by one.</summary>
public sealed class RigListState(RigStore rigs)
{
    public const int PageSize = 12;

    private ValueList<Stored<RigSummary>> summaries;
    private int wanted = PageSize;

    public bool IsLoaded { get; private set; }

    public IReadOnlyList<RigEntry> Shown { get; private set; } = [];

    public int Total => summaries.Count;

    public bool HasMore => Total > Shown.Count;

    public DeletedJustNow<Stored<RigSummary>> Deleted { get; } = new(rig => rig.Id);

    public async Task LoadAsync()
    {
        summaries = await rigs.AllAsync();
        var shown = new List<RigEntry>();
        foreach (var summary in summaries.Take(wanted))
            shown.Add(await ReadAsync(summary));
        (Shown, IsLoaded) = (shown, true);
    }

    public Task ShowMoreAsync()
    {
        wanted += PageSize;
        return LoadAsync();
    }

    /// <exception cref="StaleVersionException">It was changed since the list was loaded; the list is loaded anew.</exception>
    public Task DeleteAsync(Stored<RigSummary> rig) => Deleted.DeleteAsync(rig, () => rigs.DeleteAsync(rig.Id, rig.Version), LoadAsync);

    public Task RestoreAsync(Stored<RigSummary> rig) => Deleted.RestoreAsync(rig, () => rigs.RestoreAsync(rig.Id), LoadAsync);

    // One damaged rig must not take the others with it.
    private async Task<RigEntry> ReadAsync(Stored<RigSummary> summary)
    {
        var (rig, fault) = await rigs.FindAsync(summary.Id).OrFaultAsync();
        return new(summary, rig?.Item, fault);
    }
}
