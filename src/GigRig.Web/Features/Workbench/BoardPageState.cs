using GigRig.Data;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Features.Workbench;

/// <summary>A saved rig on the workbench: loading, saving as the next version, and what happens when somebody else saved it meanwhile.</summary>
public sealed class BoardPageState(RigStore rigs, SolveHookUp solve)
{
    public bool IsLoaded { get; private set; }

    /// <summary>The stored rig the work began with; null where there is none.</summary>
    public Stored<SavedRig>? Saved { get; private set; }

    /// <summary>Null until loaded, and where there is no such rig.</summary>
    public BoardEditor? Editor { get; private set; }

    /// <summary>Why the rig can't be read; empty where it can.</summary>
    public string Fault { get; private set; } = "";

    /// <summary>What stood in the way of saving; null where nothing did.</summary>
    public StaleVersionException? Stale { get; private set; }

    /// <summary>Whether an unsaved draft was brought back.</summary>
    public bool BroughtBack { get; private set; }

    /// <summary>Whether there is something to save.</summary>
    public bool IsChanged => Editor is { } editor && Saved is { } saved && editor.Rig != saved.Item.Rig;

    /// <summary>What the browser is to keep; null where everything is saved.</summary>
    public string? Draft => Editor is { } editor && Saved is { } saved && editor.Edit != BoardEdit.Of(saved.Item.Rig) ? BoardDraft.Write(saved.Version, editor.Edit) : null;

    public static string DraftKey(Guid id) => $"board:{id}";

    public async Task LoadAsync(Guid id)
    {
        try
        {
            Show(await rigs.FindAsync(id));
        }
        catch (UnreadableRigException unreadable)
        {
            Show(null);
            Fault = unreadable.Message;
        }
    }

    /// <summary>Goes on where the browser left off. False where the text is no draft.</summary>
    public bool BringBack(string? text)
    {
        if (Saved is not { } saved || text is null || BoardDraft.Read(text) is not var (version, edit))
            return false;
        // Saving then finds out whether the stored rig has moved on. Locks alone are nothing to save.
        BroughtBack = edit.Rig != saved.Item.Rig;
        if (BroughtBack)
            Saved = saved with { Version = version };
        Editor = new(saved.Item.Problem, edit, solve);
        return true;
    }

    /// <summary>Saves what is on the bench, broken rules and all; it is the musician's word. False where the stored rig has moved on.</summary>
    public async Task<bool> SaveAsync()
    {
        if (Saved is not { } saved || Editor is not { } editor)
            return false;
        try
        {
            Saved = await rigs.SaveAsync(saved with { Item = saved.Item with { Rig = editor.Rig } });
            (Stale, BroughtBack) = (null, false);
            return true;
        }
        catch (StaleVersionException stale)
        {
            Stale = stale;
            return false;
        }
    }

    /// <summary>Keeps what is on the bench as a rig of its own, and says which one it became.</summary>
    public async Task<Guid> SaveCopyAsync()
    {
        var (saved, rig) = (Saved!.Item, Editor!.Rig);
        var copy = await rigs.AddAsync($"{saved.Name} (copy)", saved.Note, saved.Problem, rig);
        Stale = null;
        return copy.Id;
    }

    /// <summary>Throws away what is on the bench and shows what is stored.</summary>
    public Task TakeStoredAsync() => LoadAsync(Saved!.Id);

    public void GoOn() => Stale = null;

    private void Show(Stored<SavedRig>? saved)
    {
        (Saved, Fault, Stale, BroughtBack, IsLoaded) = (saved, "", null, false, true);
        Editor = saved is null ? null : new(saved.Item.Problem, BoardEdit.Of(saved.Item.Rig), solve);
    }
}
