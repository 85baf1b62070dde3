using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;
using GigRig.Web.Queue;
using Xunit;

namespace GigRig.Web.Tests.Queue;

public sealed class PlanRunTests
{
    private static readonly RigProblem Problem = A.Draft().Wanting("delay").Problem();

    [Fact]
    public async Task The_first_rig_is_told_of_at_once_and_further_ones_with_the_next_beat()
    {
        var told = new List<int>();
        PlanRun? run = null;
        using var queue = new PlanQueue((problem, progress, _) =>
        {
            for (var wants = 1; wants <= 3; wants++)
                progress!.Report(new(new(A.Rig(), new Score() { Wants = wants }, Coverage.Of(problem, A.Rig())), 10, TimeSpan.Zero));
            return Task.FromResult<PlanOutcome>(new PlanOutcome.Undecided(10, TimeSpan.Zero));
        });

        run = new PlanRun(Problem, new Still(), () => told.Add((int)run!.Latest!.Best!.Score.Wants));
        await run.AskAsync(queue);

        Assert.Equal([1], told);
        Assert.Equal(3, run.Latest!.Best!.Score.Wants);
        run.Dispose();
    }

    /// <summary>A clock whose beats never come.</summary>
    private sealed class Still : TimeProvider
    {
        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
            System.CreateTimer(callback, state, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }
}
