namespace GigRig.Web.Shared;

/// <summary>What was deleted since a page was opened: the offer to undo does not vanish with its message.</summary>
/// <param name="idOf">What tells two of them apart.</param>
public sealed class DeletedJustNow<T>(Func<T, Guid> idOf)
{
    private readonly List<T> things = [];

    /// <summary>Latest first.</summary>
    public IEnumerable<T> Latest => things.AsEnumerable().Reverse();

    /// <summary>Deletes; where that fails, it is not in the list. Either way the page loads anew.</summary>
    public async Task DeleteAsync(T thing, Func<Task> delete, Func<Task> reload)
    {
        try
        {
            await delete();
            things.Add(thing);
        }
        finally
        {
            await reload();
        }
    }

    public async Task RestoreAsync(T thing, Func<Task> restore, Func<Task> reload)
    {
        await restore();
        things.RemoveAll(gone => idOf(gone) == idOf(thing));
        await reload();
    }
}
