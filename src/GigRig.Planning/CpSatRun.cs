using System.Diagnostics;
using System.Globalization;
using Google.OrTools.Sat;

namespace GigRig.Planning;

/// <summary>
/// One bounded, cancellable, repeatable CP-SAT solve. StopSearch is lost when it is called before the search has begun
/// (google/or-tools#1474), so it is called again until the search returns.
/// </summary>
internal sealed class CpSatRun : IDisposable
{
    private static readonly TimeSpan StopEvery = TimeSpan.FromMilliseconds(20);

    private readonly CpSolver solver = new();

    public CpSolverStatus Status { get; private set; } = CpSolverStatus.Unknown;

    public double ObjectiveValue => solver.ObjectiveValue;

    public double BestBound => solver.BestObjectiveBound;

    /// <summary>What the last solve took, in the solver's own seconds of work.</summary>
    public TimeSpan Work => TimeSpan.FromSeconds(solver.Response?.DeterministicTime ?? 0);

    public bool HasSolution => Status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;

    public bool IsTrue(ILiteral literal) => solver.BooleanValue(literal);

    public long Value(LinearExpr expression) => solver.Value(expression);

    /// <param name="work">The most work, in the solver's own seconds: a count, not a time, so that a busy machine changes nothing. Null: whatever the clock allows.</param>
    public CpSolverStatus Solve(CpModel model, Clock clock, TimeSpan? work, int seed, string extra = "")
    {
        if (clock.IsUp || work <= TimeSpan.Zero)
            return Status = CpSolverStatus.Unknown;
        var bounded = work is { } most ? string.Create(CultureInfo.InvariantCulture, $"max_deterministic_time:{most.TotalSeconds:0.######}") : "";
        solver.StringParameters = string.Create(
            CultureInfo.InvariantCulture,
            $"num_workers:1 random_seed:{seed} max_time_in_seconds:{Math.Max(0.001, clock.Left.TotalSeconds):0.###} {bounded} {extra}");
        Timer? stopper = null;
        using var registration = clock.Cancel.Register(() => stopper = new Timer(_ => solver.StopSearch(), null, TimeSpan.Zero, StopEvery));
        try
        {
            Status = solver.Solve(model);
        }
        finally
        {
            registration.Dispose();
            stopper?.Dispose();
        }

        if (Status == CpSolverStatus.ModelInvalid)
            throw new InvalidOperationException($"The planner built a model the solver refuses: {model.Validate()}");
        return Status;
    }

    public void Dispose() => solver.Dispose();
}

/// <summary>What is left of the time for one ask, and whether it was called off.</summary>
internal sealed class Clock(TimeSpan limit, CancellationToken cancel)
{
    private readonly long started = Stopwatch.GetTimestamp();

    public CancellationToken Cancel => cancel;

    public TimeSpan Elapsed => Stopwatch.GetElapsedTime(started);

    public TimeSpan Left => limit - Elapsed;

    public bool IsUp => cancel.IsCancellationRequested || Left <= TimeSpan.Zero;

    /// <summary>The same ask with less time.</summary>
    public Clock Within(TimeSpan limit) => new(limit < Left ? limit : Left, cancel);
}
