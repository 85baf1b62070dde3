using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Queue;
using Xunit;

namespace GigRig.Web.Tests.Queue;

public sealed class PlanQueueTests
{
    private static readonly RigProblem Problem = A.Draft().Wanting("delay", 20).WantingSound("Solo", 5, "drive", "delay").Needing("tuner").Problem();

    private readonly TaskCompletionSource<PlanOutcome> slow = new();
    private int running;
    private int most;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task No_more_than_the_allowed_number_run_at_once_and_all_that_wait_are_answered()
    {
        using var queue = new PlanQueue(SlowAsync, atOnce: 2, waiting: 3);

        var asked = Enumerable.Range(0, 5).Select(_ => queue.AskAsync(Problem, cancel: Cancel)).ToList();
        Assert.Equal(2, running);
        slow.SetResult(Done);

        Assert.All(await Task.WhenAll(asked), answer => Assert.IsType<QueueAnswer.Answered>(answer));
        Assert.Equal(2, most);
    }

    [Fact]
    public async Task One_too_many_is_turned_away_at_once_and_there_is_room_again_afterwards()
    {
        using var queue = new PlanQueue(SlowAsync, atOnce: 1, waiting: 1);
        var asked = new[] { queue.AskAsync(Problem, cancel: Cancel), queue.AskAsync(Problem, cancel: Cancel) };

        var turnedAway = await queue.AskAsync(Problem, cancel: Cancel);
        slow.SetResult(Done);
        await Task.WhenAll(asked);

        Assert.Equal(new QueueAnswer.Full(TimeSpan.FromSeconds(5)), turnedAway);
        Assert.IsType<QueueAnswer.Answered>(await queue.AskAsync(Problem, cancel: Cancel));
    }

    [Fact]
    public async Task Giving_up_while_waiting_is_undecided_within_all_that_is_wanted()
    {
        using var queue = new PlanQueue(SlowAsync, atOnce: 1, waiting: 1);
        using var impatient = new CancellationTokenSource();
        _ = queue.AskAsync(Problem, cancel: Cancel);

        var waiting = queue.AskAsync(Problem, cancel: impatient.Token);
        await impatient.CancelAsync();

        Assert.Equal(new QueueAnswer.Answered(new PlanOutcome.Undecided(25, TimeSpan.Zero)), await waiting);
        slow.SetResult(Done);
    }

    [Fact]
    public async Task A_planner_that_fails_gives_its_place_back()
    {
        var fail = true;
        using var queue = new PlanQueue((_, _, _) => fail ? throw new InvalidOperationException("a fault of ours") : Task.FromResult(Done), atOnce: 1, waiting: 0);

        await Assert.ThrowsAsync<InvalidOperationException>(() => queue.AskAsync(Problem, cancel: Cancel));
        fail = false;

        Assert.IsType<QueueAnswer.Answered>(await queue.AskAsync(Problem, cancel: Cancel));
    }

    private static PlanOutcome Done => new PlanOutcome.Undecided(0, TimeSpan.Zero);

    private async Task<PlanOutcome> SlowAsync(RigProblem problem, IProgress<PlanProgress>? progress, CancellationToken cancel)
    {
        most = Math.Max(most, Interlocked.Increment(ref running));
        try
        {
            return await slow.Task;
        }
        finally
        {
            Interlocked.Decrement(ref running);
        }
    }
}
