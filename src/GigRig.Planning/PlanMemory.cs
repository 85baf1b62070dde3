using GigRig.Domain.Rigs;
using GigRig.Planning.Powering;

namespace GigRig.Planning;

/// <summary>
/// What was learned from earlier questions and may spare work on the next about the same gear: which shapes were proved not to stand together on a board like
/// this, which consumers not to be fed together by a supply like this, the last rigs, and what was proved best. Makes no answer true or false: only what was proved is remembered, a rig is judged anew by the rule book. Bounded; safe
/// from many threads.
/// </summary>
public sealed class PlanMemory
{
    /// <summary>Of all misfits together: 16 MB.</summary>
    internal const int MostCharacters = 8_000_000;
    internal const int MostRigs = 32;

    private readonly LinkedList<Rig> rigs = new();

    /// <summary>Surfaces and shapes, as text, that were proved not to stand together.</summary>
    internal ForgetfulSet Misfits { get; } = new(MostCharacters);

    internal ProvenBest Best { get; } = new();

    internal StarvedSets Starved { get; } = new();

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
