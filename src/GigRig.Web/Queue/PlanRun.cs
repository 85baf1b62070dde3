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
    private volatile PlanProgress? latest;

    /// <param name="tick">Called a few times a second, on any thread, however often the planner reports.</param>
    internal PlanRun(RigProblem problem, TimeProvider time, Action tick)
    {
        (Problem, this.time, started) = (problem, time, time.GetTimestamp());
        beat = time.CreateTimer(_ => tick(), null, Beat, Beat);
    }

    public RigProblem Problem { get; }

    public TimeSpan Elapsed => time.GetElapsedTime(started);

    /// <summary>Null until a first rig is found.</summary>
    public PlanProgress? Latest => latest;

    public bool IsStopping => cancel.IsCancellationRequested;

    public Task<QueueAnswer> AskAsync(PlanQueue queue) => queue.AskAsync(Problem, new Keep(this), cancel.Token);

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

    private sealed class Keep(PlanRun run) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) => run.latest = value;
    }

    private sealed class KeepTidied(PlanRun run) : IProgress<TidyOutcome.Tidied>
    {
        public void Report(TidyOutcome.Tidied value) =>
            run.latest = new(new(value.Rig, value.Score, Coverage.Of(run.Problem, value.Rig)), value.Score.Wants, run.Elapsed);
    }
}
