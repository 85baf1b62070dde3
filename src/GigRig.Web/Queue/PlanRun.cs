using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Web.Queue;

/// <summary>One question on its way: how long it takes, the best rig so far, and the way to stop it.</summary>
public sealed class PlanRun : IDisposable
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(250);

    private readonly CancellationTokenSource cancel = new();
    private readonly TimeProvider time;
    private readonly long started;
    private readonly ITimer beat;
    private readonly Action tick;
    private volatile PlanProgress? latest;

    /// <param name="tick">Called at once for the first rig and then a few times a second, on any thread, however often the planner reports.</param>
    internal PlanRun(RigProblem problem, TimeProvider time, Action tick)
    {
        (Problem, this.time, this.tick, started) = (problem, time, tick, time.GetTimestamp());
        beat = time.CreateTimer(_ => tick(), null, Beat, Beat);
    }

    public RigProblem Problem { get; }

    public TimeSpan Elapsed => time.GetElapsedTime(started);

    /// <summary>Null until a first rig is found.</summary>
    public PlanProgress? Latest => latest;

    public bool IsStopping => cancel.IsCancellationRequested;

    public Task<QueueAnswer> AskAsync(PlanQueue queue) => queue.AskAsync(Problem, new KeepPlanned(this), cancel.Token);

    /// <summary>Null where too many wait already.</summary>
    /// <param name="rig">Whose things are stood better.</param>
    public Task<TidyOutcome?> TidyAsync(PlanQueue queue, AskTidying tidy, Rig rig) =>
        queue.TakeTurnAsync(() => tidy(Problem, rig, new KeepTidied(this), cancel.Token), () => new TidyOutcome.Undecided(), cancel.Token);

    /// <summary>The planner ends soon, with the best rig so far as its answer.</summary>
    public void Stop() => cancel.Cancel();

    public void Dispose()
    {
        beat.Dispose();
        cancel.Dispose();
    }

    private void Keep(PlanProgress value)
    {
        var isFirst = latest is null;
        latest = value;
        if (isFirst)
            tick();
    }

    private sealed class KeepPlanned(PlanRun run) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) => run.Keep(value);
    }

    private sealed class KeepTidied(PlanRun run) : IProgress<TidyOutcome.Tidied>
    {
        public void Report(TidyOutcome.Tidied value) =>
            run.Keep(new(new(value.Rig, value.Score, Coverage.Of(run.Problem, value.Rig)), value.Score.Wants, run.Elapsed));
    }
}
