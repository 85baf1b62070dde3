using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Powering;

/// <summary>
/// Gives every consumer its outlets, or proves that it cannot be done: depth-first, hardest consumer first, never trying a state twice.
/// Runs as few devices from their batteries as it can. Splitting outlets is packing bins, so that a search may be endless; then the answer is left open.
/// </summary>
/// <param name="known">What earlier searches proved; null: nothing is kept.</param>
internal sealed class PowerSearch(OutletClass[] classes, PowerAdapters adapters, int? totalCurrent, StarvedSets? known = null)
{
    /// <summary>The same while a starved set is made smaller.</summary>
    private const int MostStatesToShrink = 3_000;

    /// <summary>The same for a hook-up with fewer leads, for each number of leads.</summary>
    private const int MostStatesToSpare = 3_000;

    private readonly string supply = $"{string.Join("; ", classes.Select(c => c.Key))} {adapters} {totalCurrent}";

    /// <param name="mostStates">Looked at before the question is left open. A count, not a time, so that a busy machine changes nothing.</param>
    public PowerAnswer Feed(IReadOnlyList<Consumer> consumers, Clock clock, int mostStates = PlannerOptions.UsualPowerStates)
    {
        if (known?.Among(supply, consumers) is { } starved)
            return new PowerAnswer.Starved(starved);
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

        known?.Add(supply, kept.Select(i => consumers[i]));
        return new PowerAnswer.Starved(kept);
    }

    /// <summary>
    /// The same consumers fed with no more batteries and as few splitters as can be, then as few other adapter leads; of such hook-ups one that changes little
    /// against <paramref name="before"/>. The fewest where the search gets to its end, which it does for all but splitters galore; never more than were given.
    /// </summary>
    /// <param name="fed">How they can be fed.</param>
    public IReadOnlyList<Feed> WithFewestLeads(IReadOnlyList<Consumer> consumers, IReadOnlyList<Feed> fed, PluggedBefore? before, Clock clock)
    {
        var best = fed;
        for (var splitters = 0; splitters <= Shared(fed); splitters++)
        {
            if (Spare(splitters, int.MaxValue) is not { } found)
                continue;
            best = found;
            break;
        }

        for (var joined = 0; joined < Joined(best); joined++)
        {
            if (Spare(Shared(best), joined) is { } found)
                return found;
        }

        return best;

        IReadOnlyList<Feed>? Spare(int splitters, int joined) => new HookUpSearch(
            classes,
            adapters with { Splitter = splitters },
            totalCurrent,
            HardestFirst(consumers),
            MostStatesToSpare,
            clock,
            before,
            joined).Run(fed.Count(f => f.OnBattery)).Feeds;
    }

    private static int Shared(IEnumerable<Feed> feeds) => feeds.Where(f => f.Join == OutletJoin.Single && !f.OnBattery).CountBy(f => f.Outlets[0]).Sum(outlet => outlet.Value - 1);

    /// <summary>One reversing lead, one series lead, and a parallel lead for each outlet beyond the first.</summary>
    private static int Joined(IEnumerable<Feed> feeds) =>
        feeds.Where(f => !f.OnBattery).Sum(f => (f.Reversed ? 1 : 0) + (f.Join == OutletJoin.Single ? 0 : f.Outlets.Count - 1));

    private static Consumer[] HardestFirst(IEnumerable<Consumer> consumers) => [.. consumers.OrderBy(c => c.Patterns.Length).ThenByDescending(c => c.Draw).ThenBy(c => c.Id)];

    private (HookUpSearch.End End, IReadOnlyList<Feed>? Feeds) Solve(IReadOnlyList<Consumer> consumers, int mostStates, Clock clock)
    {
        var hardestFirst = HardestFirst(consumers);
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
