namespace GigRig.Web.Shared;

/// <summary>What was deleted since a page was opened: the offer to undo does not vanish with its message.</summary>
/// <param name="idOf">What tells two of them apart.</param>
public sealed class DeletedJustNow<T>(Func<T, Guid> idOf)
{
    private readonly List<T> things = [];

    /// <summary>Latest first.</summary>
    public IEnumerable<T> Latest => things.AsEnumerable().Reverse();

    public Task DeleteAsync(T thing, Func<Task> delete, Func<Task> reload) => DeleteAsync([thing], delete, reload);

    /// <summary>Deletes several at once; where that fails, none is in the list. Either way the page loads anew.</summary>
    public async Task DeleteAsync(IReadOnlyList<T> gone, Func<Task> delete, Func<Task> reload)
    {
        try
        {
            await delete();
            things.AddRange(gone);
        }
        finally
        {
            await reload();
        }
    }

    public Task RestoreAsync(T thing, Func<Task> restore, Func<Task> reload) => RestoreAsync([thing], restore, reload);

    public async Task RestoreAsync(IReadOnlyList<T> back, Func<Task> restore, Func<Task> reload)
    {
        await restore();
        var ids = back.Select(idOf).ToHashSet();
        things.RemoveAll(thing => ids.Contains(idOf(thing)));
        await reload();
    }
}
