using GigRig.Domain.Events;
using GigRig.Domain.Rigs;

namespace GigRig.Web.Queue;

/// <summary>Asks the planner. Tests put a slow or a fixed answer in its place.</summary>
public delegate Task<PlanOutcome> AskPlanner(RigProblem problem, IProgress<PlanProgress>? progress, CancellationToken cancel);

/// <summary>Asks the planner to stand the same things better.</summary>
public delegate Task<TidyOutcome> AskTidying(RigProblem problem, Rig rig, IProgress<TidyOutcome.Tidied>? progress, CancellationToken cancel);

/// <summary>What became of a question.</summary>
public abstract record QueueAnswer
{
    private QueueAnswer()
    {
    }

    public sealed record Answered(PlanOutcome Outcome) : QueueAnswer;

    /// <summary>Too many wait already; nothing was tried.</summary>
    public sealed record Full(TimeSpan RetryAfter) : QueueAnswer;
}

/// <summary>
/// The way to the planner for pages and for the API alike. A plan keeps a processor busy for seconds, so only a few run at once, a few more
/// wait, and the rest are turned away at once instead of making everybody wait.
/// </summary>
public sealed class PlanQueue(AskPlanner ask, int atOnce = PlanQueue.DefaultAtOnce, int waiting = PlanQueue.DefaultWaiting) : IDisposable
{
    public const int DefaultAtOnce = 2;
    public const int DefaultWaiting = 8;

    private static readonly TimeSpan RetryAfter = TimeSpan.FromSeconds(5);

    private readonly SemaphoreSlim places = new(atOnce);
    private int inside;

    /// <param name="cancel">Stops the waiting or the planning; the best rig so far is the answer.</param>
    public async Task<QueueAnswer> AskAsync(RigProblem problem, IProgress<PlanProgress>? progress = null, CancellationToken cancel = default) =>
        await TakeTurnAsync(() => ask(problem, progress, cancel), () => new PlanOutcome.Undecided(AllWants(problem.Event), TimeSpan.Zero), cancel) is { } outcome
            ? new QueueAnswer.Answered(outcome)
            : new QueueAnswer.Full(RetryAfter);

    /// <summary>Any work of the planner's, in the one queue there is.</summary>
    /// <param name="calledOff">The answer where it was called off while waiting.</param>
    /// <returns>Null where too many wait already; nothing was tried.</returns>
    public async Task<T?> TakeTurnAsync<T>(Func<Task<T>> work, Func<T> calledOff, CancellationToken cancel = default)
        where T : class
    {
        try
        {
            return Interlocked.Increment(ref inside) > atOnce + waiting ? null : await WaitAndWorkAsync(work, calledOff, cancel);
        }
        finally
        {
            Interlocked.Decrement(ref inside);
        }
    }

    public void Dispose() => places.Dispose();

    private async Task<T> WaitAndWorkAsync<T>(Func<Task<T>> work, Func<T> calledOff, CancellationToken cancel)
    {
        try
        {
            await places.WaitAsync(cancel);
        }
        catch (OperationCanceledException)
        {
            return calledOff();
        }

        try
        {
            return await work();
        }
        finally
        {
            places.Release();
        }
    }

    /// <summary>No rig can cover more than everything.</summary>
    private static long AllWants(EventType asked) =>
        asked.Needs.Where(need => need.Level == NeedLevel.Want).Sum(need => (long)need.Weight)
        + asked.Sounds.Where(sound => sound.Level == NeedLevel.Want).Sum(sound => (long)sound.Weight);
}
