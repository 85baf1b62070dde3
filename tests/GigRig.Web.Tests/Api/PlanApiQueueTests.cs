using System.Net;
using System.Text;
using GigRig.Domain.Documents;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Queue;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Api;

public sealed class PlanApiQueueTests
{
    private static readonly string Problem = RigProblemJson.Write(A.Draft().Problem());

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task When_too_many_wait_the_next_is_told_when_to_come_back()
    {
        var slow = new TaskCompletionSource<PlanOutcome>();
        using var app = new TestApp { Ask = (_, _, _) => slow.Task };
        using var client = app.CreateClient();
        var asked = Enumerable.Range(0, PlanQueue.DefaultAtOnce + PlanQueue.DefaultWaiting + 1).Select(_ => SendAsync(client, Cancel)).ToList();

        var turnedAway = await await Task.WhenAny(asked);

        Assert.Equal(HttpStatusCode.ServiceUnavailable, turnedAway.StatusCode);
        Assert.Equal(TimeSpan.FromSeconds(5), turnedAway.Headers.RetryAfter!.Delta);
        slow.SetResult(new PlanOutcome.Undecided(0, TimeSpan.Zero));
        Assert.Equal(asked.Count - 1, (await Task.WhenAll(asked)).Count(answer => answer.StatusCode == HttpStatusCode.OK));
    }

    [Fact]
    public async Task Closing_the_connection_stops_the_planner()
    {
        var started = new TaskCompletionSource();
        var stopped = new TaskCompletionSource();
        using var app = new TestApp
        {
            Ask = async (_, _, cancel) =>
            {
                started.SetResult();
                await Task.Delay(Timeout.Infinite, cancel).ContinueWith(_ => stopped.SetResult(), TaskScheduler.Default);
                return new PlanOutcome.Undecided(0, TimeSpan.Zero);
            },
        };
        using var client = app.CreateClient();
        using var impatient = new CancellationTokenSource();

        var request = SendAsync(client, impatient.Token);
        await started.Task.WaitAsync(Cancel);
        await impatient.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => request);
        await stopped.Task.WaitAsync(Cancel);
    }

    private static Task<HttpResponseMessage> SendAsync(HttpClient client, CancellationToken cancel) =>
        client.PostAsync(GigRigUrls.ApiPlan, new StringContent(Problem, Encoding.UTF8, "application/json"), cancel);
}
