namespace GigRig.Web.Features.Workbench;

/// <summary>What was, what is, and what was taken back. Without a limit: a step is a few small lists.</summary>
/// <typeparam name="T">Must not change once it is in here.</typeparam>
public sealed class EditHistory<T>(T start)
{
    private readonly Stack<(T Before, string Words)> past = [];
    private readonly Stack<(T After, string Words)> future = [];

    public T Present { get; private set; } = start;

    public bool CanUndo => past.Count > 0;

    public bool CanRedo => future.Count > 0;

    /// <summary>What would be taken back; empty where there is nothing.</summary>
    public string NextUndo => CanUndo ? past.Peek().Words : "";

    /// <summary>What would be done again; empty where there is nothing.</summary>
    public string NextRedo => CanRedo ? future.Peek().Words : "";

    /// <param name="words">What was done, for reading out when it is taken back.</param>
    public void Do(T next, string words)
    {
        past.Push((Present, words));
        future.Clear();
        Present = next;
    }

    /// <summary>Says what was taken back; null where there was nothing.</summary>
    public string? Undo()
    {
        if (!past.TryPop(out var step))
            return null;
        future.Push((Present, step.Words));
        Present = step.Before;
        return step.Words;
    }

    /// <summary>Says what was done again; null where there was nothing.</summary>
    public string? Redo()
    {
        if (!future.TryPop(out var step))
            return null;
        past.Push((Present, step.Words));
        Present = step.After;
        return step.Words;
    }
}
