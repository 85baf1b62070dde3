using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Planning.Powering;
using GigRig.Planning.Tests.Opponents;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests.Powering;

public sealed class PowerSearchTests
{
    private const int Problems = 1500;

    [Fact]
    public void It_feeds_a_set_exactly_where_trying_every_hook_up_does() =>
        GenContest.Hungry.Sample(draft =>
        {
            var problem = draft.Problem();
            var devices = Consuming(problem);

            var answer = Feed(problem, devices);

            Assert.Equal(new EveryHookUp(problem).Find(devices.Select(d => d.Id)) is not null, answer is PowerAnswer.Fed);
            if (answer is PowerAnswer.Fed fed)
                Assert.True(new HookUpJudge(problem).Allows(fed.Feeds));
        }, iter: Problems);

    [Fact]
    public void What_it_calls_starved_cannot_be_fed_and_can_without_any_one() =>
        GenContest.Hungry.Sample(draft =>
        {
            var problem = draft.Problem();
            var devices = Consuming(problem);
            if (Feed(problem, devices) is not PowerAnswer.Starved starved)
                return;
            var every = new EveryHookUp(problem);
            var ids = starved.Consumers.Select(i => devices[i].Id).ToList();

            Assert.Null(every.Find(ids));
            Assert.All(ids, left => Assert.NotNull(every.Find(ids.Where(id => id != left))));
        }, iter: Problems);

    [Fact]
    public void It_runs_as_few_from_batteries_as_it_can()
    {
        var boxes = Enumerable.Range(1, 3).Select(i => A.Device($"box{i}").Drawing(60).OnBatteryToo()).ToArray();
        var problem = A.Draft().With(boxes).FedBy(A.Outlet("1").Giving(120), A.Outlet("2").Giving(60)).OwningAdapters(splitter: 1).Problem();

        Assert.DoesNotContain(Assert.IsType<PowerAnswer.Fed>(Feed(problem, boxes)).Feeds, feed => feed.OnBattery);
    }

    /// <summary>Alike outlets and alike devices are told apart by no search that finishes: 30 devices before 29 outlets.</summary>
    [Fact]
    public void Many_alike_are_no_hindrance()
    {
        var boxes = Enumerable.Range(1, 30).Select(i => A.Device($"box{i}").Drawing(60)).ToArray();
        var problem = A.Draft().With(boxes).FedBy([.. Enumerable.Range(1, 29).Select(i => A.Outlet($"{i}"))]).Problem();

        Assert.Equal(30, Assert.IsType<PowerAnswer.Starved>(Feed(problem, boxes)).Consumers.Count);
        Assert.Equal(29, Assert.IsType<PowerAnswer.Fed>(Feed(problem, boxes[1..])).Feeds.Select(feed => feed.Outlets[0]).Distinct().Count());
    }

    /// <summary>Splitting outlets is packing bins: 24 draws of 60–139 mA into eight outlets that give so much of their sum.</summary>
    [Theory]
    [InlineData(99, typeof(PowerAnswer.Starved))]
    [InlineData(110, typeof(PowerAnswer.Fed))]
    [InlineData(101, null)]
    [InlineData(102, null)]
    [InlineData(103, null)]
    public void However_tight_the_outlets_are_packed_it_comes_to_an_end(int percent, Type? expected)
    {
        var problem = Packed(percent);

        var answer = Feed(problem, [.. problem.Devices]);

        Assert.True(expected is null || answer.GetType() == expected, $"{answer}");
        if (answer is PowerAnswer.Fed fed)
            Assert.True(new HookUpJudge(problem).Allows(fed.Feeds));
    }

    [Fact]
    public void Called_off_it_leaves_the_answer_open()
    {
        var problem = Packed(103);

        Assert.IsType<PowerAnswer.Open>(Feed(problem, [.. problem.Devices], new Clock(TimeSpan.FromMinutes(1), new CancellationToken(canceled: true))));
    }

    private static RigProblem Packed(int percent)
    {
        var random = new Random(5);
        var boxes = Enumerable.Range(1, 24).Select(i => A.Device($"box{i}").Drawing(60 + random.Next(80))).ToArray();
        var each = boxes.Sum(box => box.Power!.Current.Value) * percent / 800;
        return A.Draft().With(boxes).FedBy([.. Enumerable.Range(1, 8).Select(i => A.Outlet($"{i}").Giving(each))]).OwningAdapters(splitter: 16).Problem();
    }

    private static Device[] Consuming(RigProblem problem) => [.. problem.Devices.Where(d => d.Power is not null)];

    private static PowerAnswer Feed(RigProblem problem, IReadOnlyList<Device> devices, Clock? clock = null)
    {
        var classes = OutletClass.Of(problem.Supply);
        var patterns = new FeedPatterns(classes, problem.Adapters);
        var consumers = devices.Select(device =>
        {
            var draw = device.Power!.DrawWith(problem.Options.Headroom).Value;
            return new Consumer(device.Id, device.Power, draw, patterns.For(device.Power, draw));
        });
        return new PowerSearch(classes, problem.Adapters, problem.Supply?.TotalCurrent?.Value).Feed([.. consumers], clock ?? Ask.Patiently);
    }
}
