using GigRig.Data;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Features.Workbench;

/// <summary>A saved rig on the workbench: loading, saving as the next version, and what happens when somebody else saved it meanwhile.</summary>
public sealed class BoardPageState(RigStore rigs, GearStore gear, SolveHookUp solve)
{
    private RigProblem? problem;

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
        var (found, fault) = await rigs.FindAsync(id).OrFaultAsync();
        problem = found is null ? null : OwnedSince.On(found.Item.Problem, await gear.AllAsync());
        Show(found);
        Fault = fault;
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
        Editor = new(problem!, edit, solve);
        return true;
    }

    /// <summary>Saves what is on the bench, broken rules and all; it is the musician's word. False where the stored rig has moved on.</summary>
    public async Task<bool> SaveAsync()
    {
        if (Saved is not { } saved || Editor is not { } editor)
            return false;
        try
        {
            Saved = await rigs.SaveAsync(saved with { Item = Bench(saved.Item, editor) });
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
        var mine = Bench(Saved!.Item, Editor!);
        var copy = await rigs.AddAsync($"{mine.Name} (copy)", mine.Note, mine.Problem, mine.Rig);
        Stale = null;
        return copy.Id;
    }

    /// <summary>Throws away what is on the bench and shows what is stored.</summary>
    public Task TakeStoredAsync() => LoadAsync(Saved!.Id);

    public void GoOn() => Stale = null;

    private static SavedRig Bench(SavedRig saved, BoardEditor editor) =>
        saved with { Rig = editor.Rig, Problem = OwnedSince.Kept(saved.Problem, editor.Problem, editor.Rig) };

    private void Show(Stored<SavedRig>? saved)
    {
        (Saved, Fault, Stale, BroughtBack, IsLoaded) = (saved, "", null, false, true);
        Editor = saved is null ? null : new(problem!, BoardEdit.Of(saved.Item.Rig), solve);
    }
}
