using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Planning.Tests.Opponents;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests;

public sealed class RigPlannerHookUpTests
{
    [Fact]
    public void It_feeds_a_set_exactly_where_trying_every_hook_up_does() =>
        GenContest.Hungry.Sample(draft =>
        {
            var problem = draft.Problem();
            var devices = problem.Devices.Select(d => d.Id).ToList();

            var answer = HookUp(problem, devices);

            Assert.Equal(new EveryHookUp(problem).Find(devices) is not null, answer is HookUpAnswer.Fed);
            if (answer is HookUpAnswer.Fed fed)
                Assert.True(new HookUpJudge(problem).Allows(fed.HookUp));
        }, iter: 300);

    [Fact]
    public void It_takes_no_more_batteries_splitters_and_other_leads_than_the_best_of_every_hook_up() =>
        GenContest.Hungry.Sample(draft =>
        {
            var problem = draft.Problem();
            var devices = problem.Devices.Select(d => d.Id).ToList();

            if (HookUp(problem, devices) is HookUpAnswer.Fed fed)
                Assert.Equal(new EveryHookUp(problem).Fewest(devices), EveryHookUp.LeadsOf(fed.HookUp));
        }, iter: 600);

    [Fact]
    public void A_free_outlet_goes_before_a_splitter()
    {
        // Plugged in one after another, the hungriest first, echo takes outlet 1, hall 3, and fuzz must share with echo.
        var problem = A.Draft()
            .With(A.Device("echo").Drawing(90).AtVolts(9, 12), A.Device("hall").Drawing(20), A.Device("fuzz").Drawing(10))
            .FedBy(A.Outlet("1"), A.Outlet("2").AtVolts(12), A.Outlet("3").Giving(30)).OwningAdapters(splitter: 2).Problem();

        var fed = Assert.IsType<HookUpAnswer.Fed>(HookUp(problem, problem.Devices.Select(d => d.Id)));

        Assert.Equal((0, 0, 0), EveryHookUp.LeadsOf(fed.HookUp));
    }

    [Fact]
    public void Fed_before_a_device_keeps_its_outlet_unless_another_can_be_fed_only_there()
    {
        var problem = A.Draft()
            .With(A.Device("echo").Drawing(80), A.Device("fuzz").Drawing(20), A.Device("hall").Drawing(300))
            .FedBy(A.Outlet("1"), A.Outlet("2"), A.Outlet("3"), A.Outlet("4").Giving(500)).Problem();
        Feed[] before = [.. A.Rig().Feeding("fuzz", "4").Feeding("echo", "3").HookUp];

        Assert.Equal(["3", "4"], Plugged("echo", "fuzz"));
        Assert.Equal(["3", "1", "4"], Plugged("echo", "fuzz", "hall"));

        IEnumerable<string> Plugged(params string[] devices) =>
            Assert.IsType<HookUpAnswer.Fed>(new RigPlanner().HookUp(problem, devices.Select(d => new GearId(d)), before, TestContext.Current.CancellationToken))
                .HookUp.OrderBy(f => f.Device).Select(f => f.Outlets[0]);
    }

    [Fact]
    public void The_reason_is_in_numbers()
    {
        var problem = A.Draft()
            .With(A.Device("echo").Drawing(150), A.Device("hall").Drawing(120), A.Device("fuzz").Drawing(5))
            .FedBy(A.Outlet("1").Giving(200), A.Outlet("2").Giving(100)).WithHeadroom(0.2m).Problem();

        var starved = Assert.IsType<HookUpAnswer.Starved>(HookUp(problem, problem.Devices.Select(d => d.Id)));

        Assert.Equal([new GearId("echo"), new GearId("hall")], starved.Culprits);
        Assert.Equal(
            "echo (9 V DC, 150 mA, 180 mA with headroom) and hall (9 V DC, 120 mA, 144 mA with headroom) cannot all be fed. supply has 2 outlets: 1 × 9 V DC 200 mA, 1 × 9 V DC 100 mA.",
            starved.Sentence);
    }

    [Fact]
    public void One_that_no_outlet_suits_is_named_alone()
    {
        var problem = A.Draft().With(A.Device("echo").Drawing(50).AtVolts(12, 15), A.Device("hall").Drawing(50)).FedBy(A.Outlet("1"), A.Outlet("2")).Problem();

        var starved = Assert.IsType<HookUpAnswer.Starved>(HookUp(problem, problem.Devices.Select(d => d.Id)));

        Assert.Equal("echo (12 V to 15 V DC, 50 mA) cannot be fed. supply has 2 outlets: 2 × 9 V DC 100 mA.", starved.Sentence);
    }

    [Fact]
    public void Nothing_to_feed_needs_no_hook_up() =>
        Assert.Empty(Assert.IsType<HookUpAnswer.Fed>(HookUp(A.Draft().With(A.Device("fuzz")).Problem(), [new("fuzz"), new("ghost")])).HookUp);

    private static HookUpAnswer HookUp(RigProblem problem, IEnumerable<GearId> devices) => new RigPlanner().HookUp(problem, devices, cancel: TestContext.Current.CancellationToken);
}
