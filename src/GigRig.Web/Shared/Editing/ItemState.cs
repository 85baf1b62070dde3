using GigRig.Data;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;
using GigRig.Web.Shared.Roles;

namespace GigRig.Web.Shared.Editing;

/// <summary>One stored thing being added or edited.</summary>
/// <param name="place">Names the kind of thing among all drafts.</param>
public abstract class ItemState(string place)
{
    /// <summary>Null for a new thing.</summary>
    public Guid? Id { get; protected set; }

    public bool IsNew => Id is null;

    public abstract LiveForm Form { get; }

    public RoleChoices Roles { get; protected set; } = new([]);

    /// <summary>Set where saving found that the stored thing has moved on, until the owner says what shall count.</summary>
    public StaleVersionException? Stale { get; protected set; }

    public string DraftKey => $"{place}/{Id?.ToString() ?? "new"}";

    /// <summary>False where there is no such thing.</summary>
    public abstract Task<bool> LoadAsync(Guid? id, LengthUnit unit);

    /// <summary>False where the form has errors, which then all show, or the stored thing has moved on.</summary>
    public abstract Task<bool> SaveAsync();

    /// <summary>Answers <see cref="Stale"/>: what is typed here replaces what is stored.</summary>
    public abstract Task<bool> KeepMineAsync();

    public abstract Task TakeStoredAsync();

    public void GoOnTyping() => Stale = null;

    /// <summary>False where the stored thing has moved on.</summary>
    public abstract Task<bool> DeleteAsync();

    public abstract Task UndoDeleteAsync();

    /// <summary>Goes on from what was typed earlier.</summary>
    public abstract void BringBack(LiveForm kept);
}

/// <summary>The same for one kind of thing; a kind adds where it is stored.</summary>
public abstract class ItemState<TItem, TForm>(string place, RoleStore roles) : ItemState(place)
    where TForm : LiveForm, IFormOf<TItem>, new()
    where TItem : class
{
    private TForm form = new();

    public override TForm Form => form;

    public override async Task<bool> LoadAsync(Guid? id, LengthUnit unit)
    {
        Roles = new((await roles.AllAsync()).Select(stored => stored.Item));
        form = new TForm { Unit = unit };
        Stale = null;
        Id = id;
        if (id is { } known)
        {
            if (await FindAsync(known) is not { } stored)
                return false;
            form.Show(stored.Item);
            form.Version = stored.Version;
        }

        form.Check();
        return true;
    }

    public override async Task<bool> SaveAsync()
    {
        form.Errors.ShowAll();
        if (form.Read() is not { } item)
            return false;
        try
        {
            await StoreInventedRolesAsync();
            var stored = Id is { } id ? await SaveAsync(new Stored<TItem>(id, form.Version, item)) : await AddAsync(item);
            (Id, form.Version, Stale) = (stored.Id, stored.Version, null);
            return true;
        }
        catch (StaleVersionException stale)
        {
            Stale = stale;
            return false;
        }
        catch (RefusedThingException refused)
        {
            // The form's own check should have found it; the store has the last word.
            form.Errors.Set(refused.Complaints.Select(complaint => new FieldError(complaint.Path.TrimStart('/'), complaint.Message)));
            return false;
        }
    }

    public override async Task<bool> KeepMineAsync()
    {
        if (Id is { } id)
        {
            if (Stale?.StoredVersion is null)
                await RestoreAsync(id);
            if (await FindAsync(id) is { } stored)
                form.Version = stored.Version;
            else
                Id = null;
        }

        Stale = null;
        return await SaveAsync();
    }

    public override Task TakeStoredAsync() => LoadAsync(Id, form.Unit);

    public override async Task<bool> DeleteAsync()
    {
        try
        {
            if (Id is { } id)
                await DeleteAsync(id, form.Version);
            return true;
        }
        catch (StaleVersionException stale)
        {
            Stale = stale;
            return false;
        }
    }

    public override Task UndoDeleteAsync() => Id is { } id ? RestoreAsync(id) : Task.CompletedTask;

    public override void BringBack(LiveForm kept)
    {
        form = (TForm)kept;
        form.Errors.ShowAll();
        form.Check();
    }

    protected abstract Task<Stored<TItem>?> FindAsync(Guid id);

    protected abstract Task<Stored<TItem>> AddAsync(TItem item);

    protected abstract Task<Stored<TItem>> SaveAsync(Stored<TItem> mine);

    protected abstract Task DeleteAsync(Guid id, int version);

    protected abstract Task RestoreAsync(Guid id);

    private async Task StoreInventedRolesAsync()
    {
        var used = form.UsedRoles.ToHashSet(StringComparer.Ordinal);
        foreach (var role in Roles.Invented.Where(role => used.Contains(role.Role.Key)).ToList())
        {
            await roles.AddAsync(role);
            Roles.Stored(role);
        }
    }
}
