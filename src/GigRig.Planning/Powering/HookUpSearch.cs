using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Planning.Powering;

/// <summary>One search through the hook-ups of these consumers, in their order, with a fixed number of batteries allowed.</summary>
/// <param name="adapters">The leads that may be used.</param>
/// <param name="before">How each was fed before; kept where nothing speaks against it.</param>
/// <param name="mostJoined">How many reversing, parallel and series leads may be used in all.</param>
internal sealed class HookUpSearch(
    OutletClass[] classes,
    PowerAdapters adapters,
    int? totalCurrent,
    Consumer[] consumers,
    int mostStates,
    Clock clock,
    PluggedBefore? before = null,
    int mostJoined = int.MaxValue)
{
    private readonly Demand[] demands = Demand.From(consumers);
    private readonly int[] free = [.. classes.Select(c => c.Count)];
    private readonly Stack<Step> steps = new();
    private readonly List<Open> open = [];
    private readonly HashSet<string> dead = new(StringComparer.Ordinal);
    private readonly FeedPattern[][] patterns = [.. consumers.Select(c => before?.First(c, classes) ?? c.Patterns)];
    private int reverse = adapters.Reverse;
    private int parallel = adapters.Parallel;
    private int series = adapters.Series;
    private int splitters = adapters.Splitter;
    private int joined = mostJoined;
    private long current = totalCurrent ?? long.MaxValue;
    private int states;
    private bool givenUp;

    public enum End
    {
        Found,

        /// <summary>Proved: there is none.</summary>
        Exhausted,

        /// <summary>Out of states or of time.</summary>
        GivenUp,
    }

    public (End End, IReadOnlyList<Feed>? Feeds) Run(int batteries) =>
        Next(0, batteries) ? (End.Found, Plug()) : (givenUp ? End.GivenUp : End.Exhausted, null);

    private bool Next(int index, int batteries)
    {
        if (index == consumers.Length)
            return true;
        givenUp |= ++states > mostStates || clock.IsUp;
        if (givenUp || !HasRoom(demands[index], batteries))
            return false;
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

    /// <summary>Whether currents and outlets could be enough at best. What an open outlet has left counts only if it can feed the least of the hungry.</summary>
    private bool HasRoom(Demand demand, int batteries)
    {
        var outlets = splitters;
        long room = open.Where(o => o.Left >= demand.Least).Sum(o => (long)o.Left);
        for (var c = 0; c < classes.Length; c++)
        {
            outlets += free[c];
            room += (long)free[c] * classes[c].Current;
        }

        return batteries > 0 ? demand.WithoutBatteries <= room : demand.Total <= room && demand.Count <= outlets;
    }

    private bool Alone(Consumer consumer, int index, int batteries)
    {
        foreach (var pattern in patterns[index])
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
        foreach (var outlet in open.DistinctBy(o => (o.Class, o.Volts, o.Left)).ToArray())
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
        pattern.JoinLeads <= joined
        && pattern.ReverseLeads <= reverse
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
        joined -= times * pattern.JoinLeads;
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
        Step[] taken = [.. steps.Reverse()];
        var outlets = new OutletNames(classes, before, taken.Where(s => s.Pattern is not null).Select(s => (s.Consumer.Id, s.Pattern!)));
        var feeds = new List<Feed>();
        foreach (var step in taken)
        {
            if (step.Pattern is { } pattern)
            {
                var ids = outlets.Of(step.Consumer.Id, pattern);
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
