using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Planning;

/// <summary>
/// What was proved best of the last questions. It bounds every later one that asks the same and demands more: a pin, a ban or a fixed place takes sets away and adds
/// none. A rig that comes up to it is then best without a search. Safe from many threads.
/// </summary>
internal sealed class ProvenBest
{
    internal const int Most = 16;

    private readonly LinkedList<Proved> proved = new();

    internal int Count
    {
        get
        {
            lock (proved)
                return proved.Count;
        }
    }

    public void Add(RigProblem problem, Score best)
    {
        var one = new Proved(Bare(problem), problem.Options, best);
        lock (proved)
        {
            proved.AddFirst(one);
            if (proved.Count > Most)
                proved.RemoveLast();
        }
    }

    /// <summary>No rig for this is better, leaving out where things stand; null where nothing is known.</summary>
    public Score? BoundOn(RigProblem problem)
    {
        Proved[] all;
        lock (proved)
            all = [.. proved];
        var bare = Bare(problem);
        Score? least = null;
        foreach (var one in all.Where(p => p.IsNoStricterThan(problem.Options) && p.Asked == bare))
            least = least is { } other && one.Best.CompareChoice(other) >= 0 ? other : one.Best;
        return least;
    }

    /// <summary>The question without what it demands beyond its event, and without what changes no choice.</summary>
    private static RigProblemDraft Bare(RigProblem problem) => problem.Draft with
    {
        Options = PlanOptions.Default with { Headroom = problem.Options.Headroom, Plugs = problem.Options.Plugs, SwitchSpacing = problem.Options.SwitchSpacing },
    };

    private sealed record Proved(RigProblemDraft Asked, PlanOptions Demands, Score Best)
    {
        public bool IsNoStricterThan(PlanOptions other) =>
            Demands.Pin.All(other.Pin.Contains) && Demands.Ban.All(other.Ban.Contains) && Demands.Fixed.All(other.Fixed.Contains);
    }
}
