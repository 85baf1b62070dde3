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

    /// <summary>Why nothing was written, in words; empty where it was.</summary>
    public string Fault { get; protected set; } = "";

    public string DraftKey => $"{place}/{Id?.ToString() ?? "new"}";

    /// <summary>False where there is no such thing.</summary>
    public abstract Task<bool> LoadAsync(Guid? id, LengthUnit unit);

    /// <summary>False where the form has errors, which then all show, the stored thing has moved on, or the disk did not take it.</summary>
    public abstract Task<bool> SaveAsync();

    /// <summary>Answers <see cref="Stale"/>: what is typed here replaces what is stored.</summary>
    public abstract Task<bool> KeepMineAsync();

    public abstract Task TakeStoredAsync();

    public void GoOnTyping() => Stale = null;

    /// <summary>False where the stored thing has moved on, or the disk did not take it.</summary>
    public abstract Task<bool> DeleteAsync();

    public abstract Task UndoDeleteAsync();

    /// <summary>Goes on from what was typed earlier.</summary>
    public abstract void BringBack(LiveForm kept);
}
