using GigRig.Data;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Shared.Editing;

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
        Fault = "";
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
        Fault = "";
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
        catch (NotWrittenException notWritten)
        {
            Fault = notWritten.Message;
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
        Fault = "";
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
        catch (NotWrittenException notWritten)
        {
            Fault = notWritten.Message;
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
