using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Planning.Powering;

/// <summary>
/// Gives every consumer its outlets, or proves that it cannot be done: depth-first, hardest consumer first, never trying a state twice.
/// Runs as few devices from their batteries as it can.
/// </summary>
internal sealed class PowerSearch(OutletClass[] classes, PowerAdapters adapters, int? totalCurrent)
{
    public PowerAnswer Feed(IReadOnlyList<Consumer> consumers)
    {
        if (Solve(consumers) is { } feeds)
            return new PowerAnswer.Fed(feeds);
        var kept = Enumerable.Range(0, consumers.Count).ToList();
        foreach (var one in Enumerable.Range(0, consumers.Count).OrderBy(i => consumers[i].Draw).ThenBy(i => i))
        {
            var without = kept.Where(i => i != one).ToList();
            if (Solve([.. without.Select(i => consumers[i])]) is null)
                kept = without;
        }

        return new PowerAnswer.Starved(kept);
    }

    private IReadOnlyList<Feed>? Solve(IReadOnlyList<Consumer> consumers)
    {
        for (var batteries = 0; batteries <= consumers.Count(c => c.Need.Battery); batteries++)
        {
            var attempt = new Attempt(classes, adapters, totalCurrent, [.. consumers.OrderBy(c => c.Patterns.Length).ThenByDescending(c => c.Draw).ThenBy(c => c.Id)]);
            if (attempt.Run(batteries) is { } feeds)
                return feeds;
        }

        return null;
    }

    /// <summary>One search with a fixed number of batteries allowed.</summary>
    private sealed class Attempt(OutletClass[] classes, PowerAdapters adapters, int? totalCurrent, Consumer[] consumers)
    {
        private readonly int[] free = [.. classes.Select(c => c.Count)];
        private readonly Stack<Step> steps = new();
        private readonly List<Open> open = [];
        private readonly HashSet<string> dead = new(StringComparer.Ordinal);
        private int reverse = adapters.Reverse;
        private int parallel = adapters.Parallel;
        private int series = adapters.Series;
        private int splitters = adapters.Splitter;
        private long current = totalCurrent ?? long.MaxValue;

        public IReadOnlyList<Feed>? Run(int batteries) => Next(0, batteries) ? Plug() : null;

        private bool Next(int index, int batteries)
        {
            if (index == consumers.Length)
                return true;
            var state = State(index, batteries);
            if (dead.Contains(state))
                return false;
            var consumer = consumers[index];
            if (Alone(consumer, index, batteries) || Shared(consumer, index, batteries))
                return true;
            if (batteries > 0 && consumer.Need.Battery)
            {
                steps.Push(new(consumer, null, null));
                if (Next(index + 1, batteries - 1))
                    return true;
                steps.Pop();
            }

            dead.Add(state);
            return false;
        }

        private bool Alone(Consumer consumer, int index, int batteries)
        {
            foreach (var pattern in consumer.Patterns)
            {
                var load = (long)consumer.Draw * pattern.LoadTimes;
                if (!HasLeft(pattern) || load > current)
                    continue;
                Take(pattern, 1, load);
                var opened = Opened(consumer, pattern);
                if (opened is not null)
                    open.Add(opened);
                steps.Push(new(consumer, pattern, opened));
                if (Next(index + 1, batteries))
                    return true;
                steps.Pop();
                if (opened is not null)
                    open.Remove(opened);
                Take(pattern, -1, -load);
            }

            return false;
        }

        private bool Shared(Consumer consumer, int index, int batteries)
        {
            if (splitters == 0 || consumer.Draw > current)
                return false;
            foreach (var outlet in open.ToArray())
            {
                if (outlet.Left < consumer.Draw || !FeedPatterns.MayShare(consumer.Need, classes[outlet.Class], outlet.Volts))
                    continue;
                splitters--;
                outlet.Left -= consumer.Draw;
                current -= consumer.Draw;
                steps.Push(new(consumer, null, outlet));
                if (Next(index + 1, batteries))
                    return true;
                steps.Pop();
                splitters++;
                outlet.Left += consumer.Draw;
                current += consumer.Draw;
            }

            return false;
        }

        private bool HasLeft(FeedPattern pattern) =>
            pattern.ReverseLeads <= reverse
            && pattern.ParallelLeads <= parallel
            && pattern.SeriesLeads <= series
            && pattern.Classes.All(c => pattern.Uses(c) <= free[c]);

        private void Take(FeedPattern pattern, int times, long load)
        {
            foreach (var c in pattern.Classes)
                free[c] -= times;
            reverse -= times * pattern.ReverseLeads;
            parallel -= times * pattern.ParallelLeads;
            series -= times * pattern.SeriesLeads;
            current -= load;
        }

        private Open? Opened(Consumer consumer, FeedPattern pattern) =>
            adapters.Splitter > 0 && pattern.Join == OutletJoin.Single && FeedPatterns.MayShare(consumer.Need, classes[pattern.Classes[0]], pattern.Settings[0])
                ? new Open(pattern.Classes[0], pattern.Settings[0], classes[pattern.Classes[0]].Current - consumer.Draw)
                : null;

        private string State(int index, int batteries) =>
            $"{index} {batteries} {string.Join(',', free)} {reverse} {parallel} {series} {splitters} {current} "
            + string.Join(',', open.Select(o => (o.Class, o.Volts, o.Left)).Order());

        private IReadOnlyList<Feed> Plug()
        {
            var next = classes.Select(c => new Queue<string>(c.Ids)).ToArray();
            var feeds = new List<Feed>();
            foreach (var step in steps.Reverse())
            {
                if (step.Pattern is { } pattern)
                {
                    var ids = pattern.Classes.Select(c => next[c].Dequeue()).ToValueList();
                    if (step.Outlet is { } opened)
                        opened.Id = ids[0];
                    feeds.Add(new(step.Consumer.Id, ids, pattern.Join, pattern.Volts.MilliV, pattern.Settings.Select(v => v.MilliV).ToValueList(), pattern.Reversed));
                }
                else if (step.Outlet is { } shared)
                {
                    feeds.Add(new(step.Consumer.Id, [shared.Id!], OutletJoin.Single, shared.Volts.MilliV, [shared.Volts.MilliV]));
                }
                else
                {
                    feeds.Add(Domain.Rigs.Feed.FromBattery(step.Consumer.Id));
                }
            }

            return feeds;
        }

        private sealed record Step(Consumer Consumer, FeedPattern? Pattern, Open? Outlet);

        /// <summary>An outlet in use that others may still share.</summary>
        private sealed class Open(int outletClass, int volts, int left)
        {
            public int Class => outletClass;

            public int Volts => volts;

            public int Left { get; set; } = left;

            public string? Id { get; set; }
        }
    }
}
