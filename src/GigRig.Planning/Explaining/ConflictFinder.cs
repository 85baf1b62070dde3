using GigRig.Domain;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Explaining;

/// <summary>Finds a smallest set of facts that cannot hold together: lifts them one at a time and keeps lifted whatever the impossibility does not need.</summary>
internal sealed class ConflictFinder(RigProblem problem, PlannerOptions options, Clock clock)
{
    private static readonly TimeSpan Each = TimeSpan.FromSeconds(3);

    public ValueList<ConflictPart> Find()
    {
        var ask = new AskAgain(options, clock, Each);
        var draft = problem.Draft;
        var kept = new List<Fact>();
        foreach (var fact in Facts.Of(problem))
        {
            var without = fact.Lift(draft);

            // Only a proof takes a fact out; in doubt, or out of time, it stays in the conflict.
            if (ask.IsImpossible(without))
                draft = without;
            else
                kept.Add(fact);
        }

        if (kept.Count == 0)
            throw new InvalidOperationException("The problem is impossible with every fact lifted: the planner is at fault.");
        return kept.Select(f => f.AsPart()).ToValueList();
    }
}
