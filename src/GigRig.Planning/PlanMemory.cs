using System.Collections.Concurrent;
using GigRig.Domain.Rigs;

namespace GigRig.Planning;

/// <summary>
/// What was learned from earlier questions and may spare work on the next about the same gear: which shapes were proved not to stand together on a board like
/// this, and the last rigs. Makes no answer true or false: a misfit is remembered only once proved, a rig is judged anew by the rule book. Bounded; safe from many threads.
/// </summary>
public sealed class PlanMemory
{
    internal const int MostMisfits = 20_000;
    internal const int MostRigs = 32;

    private readonly ConcurrentDictionary<string, bool> misfits = new(StringComparer.Ordinal);
    private readonly LinkedList<Rig> rigs = new();

    internal int Misfits => misfits.Count;

    /// <summary>The last first.</summary>
    internal IReadOnlyList<Rig> Rigs
    {
        get
        {
            lock (rigs)
                return [.. rigs];
        }
    }

    /// <summary>How the last rig was fed.</summary>
    internal IEnumerable<Feed> LastHookUp
    {
        get
        {
            lock (rigs)
                return rigs.First?.Value.HookUp ?? [];
        }
    }

    internal bool IsMisfit(string key) => misfits.ContainsKey(key);

    internal void RememberMisfit(string key)
    {
        if (misfits.Count >= MostMisfits)
            misfits.Clear();
        misfits[key] = true;
    }

    internal void Remember(Rig rig)
    {
        lock (rigs)
        {
            rigs.Remove(rig);
            rigs.AddFirst(rig);
            if (rigs.Count > MostRigs)
                rigs.RemoveLast();
        }
    }
}
