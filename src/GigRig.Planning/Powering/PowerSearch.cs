using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Powering;

/// <summary>
/// Gives every consumer its outlets, or proves that it cannot be done: depth-first, hardest consumer first, never trying a state twice.
/// Runs as few devices from their batteries as it can. Splitting outlets is packing bins, so that a search may be endless; then the answer is left open.
/// </summary>
internal sealed class PowerSearch(OutletClass[] classes, PowerAdapters adapters, int? totalCurrent)
{
    /// <summary>The same while a starved set is made smaller.</summary>
    private const int MostStatesToShrink = 3_000;

    /// <param name="mostStates">Looked at before the question is left open. A count, not a time, so that a busy machine changes nothing.</param>
    public PowerAnswer Feed(IReadOnlyList<Consumer> consumers, Clock clock, int mostStates = PlannerOptions.UsualPowerStates)
    {
        switch (Solve(consumers, mostStates, clock))
        {
            case (HookUpSearch.End.Found, { } feeds):
                return new PowerAnswer.Fed(feeds);
            case (HookUpSearch.End.GivenUp, _):
                return new PowerAnswer.Open();
        }

        var kept = Enumerable.Range(0, consumers.Count).ToList();
        foreach (var one in Enumerable.Range(0, consumers.Count).OrderBy(i => consumers[i].Draw).ThenBy(i => i))
        {
            var without = kept.Where(i => i != one).ToList();
            if (Solve([.. without.Select(i => consumers[i])], MostStatesToShrink, clock).End == HookUpSearch.End.Exhausted)
                kept = without;
        }

        return new PowerAnswer.Starved(kept);
    }

    private (HookUpSearch.End End, IReadOnlyList<Feed>? Feeds) Solve(IReadOnlyList<Consumer> consumers, int mostStates, Clock clock)
    {
        Consumer[] hardestFirst = [.. consumers.OrderBy(c => c.Patterns.Length).ThenByDescending(c => c.Draw).ThenBy(c => c.Id)];
        var end = HookUpSearch.End.Exhausted;
        for (var batteries = 0; batteries <= consumers.Count(c => c.Need.Battery); batteries++)
        {
            var search = new HookUpSearch(classes, adapters, totalCurrent, hardestFirst, mostStates, clock);
            var (outcome, feeds) = search.Run(batteries);
            if (outcome == HookUpSearch.End.Found)
                return (outcome, feeds);
            if (outcome == HookUpSearch.End.GivenUp)
                end = outcome;
        }

        return (end, null);
    }
}
