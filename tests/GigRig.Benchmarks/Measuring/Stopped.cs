using System.Diagnostics;
using GigRig.Domain.Rigs;
using GigRig.Planning;

namespace GigRig.Benchmarks.Measuring;

/// <summary>What the planner answered when it was called off.</summary>
/// <param name="CalledOff">How long after it was asked.</param>
/// <param name="Waited">From then to the answer; null where it had answered before.</param>
/// <param name="Worked">Processor time of the whole process meanwhile: what is left of the wait where the machine is busy with other things.</param>
/// <param name="BestSeen">The best rig it had told of by the time it answered; null: none.</param>
internal sealed record Stopped(TimeSpan CalledOff, TimeSpan? Waited, TimeSpan? Worked, PlanOutcome Outcome, Proposal? BestSeen)
{
    public static Stopped After(RigProblem problem, TimeSpan moment)
    {
        GC.Collect();
        using var cancel = new CancellationTokenSource();
        var seen = new Seen();
        var asked = Stopwatch.GetTimestamp();
        var answer = new RigPlanner().PlanAsync(problem, progress: seen, cancel: cancel.Token);
        if (answer.Wait(moment))
            return new(moment, null, null, answer.Result, seen.Best);
        var cpu = Environment.CpuUsage.TotalTime;
        var calledOff = Stopwatch.GetTimestamp();
        cancel.Cancel();
        var outcome = answer.GetAwaiter().GetResult();
        return new(Stopwatch.GetElapsedTime(asked, calledOff), Stopwatch.GetElapsedTime(calledOff), Environment.CpuUsage.TotalTime - cpu, outcome, seen.Best);
    }

    /// <summary>Called from the searching thread, one report after the other.</summary>
    private sealed class Seen : IProgress<PlanProgress>
    {
        public Proposal? Best { get; private set; }

        public void Report(PlanProgress value) => Best = value.Best ?? Best;
    }
}
