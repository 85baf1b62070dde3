using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

/// <summary>Current, headroom, volts, kind, polarity, batteries and the total.</summary>
public sealed class FeedingTests
{
    [Fact]
    public async Task An_outlet_feeds_just_what_it_gives()
    {
        await Ask.Best(Echo(100).FedBy(A.Outlet("1").Giving(100)));
        await Ask.Impossible(Echo(101).FedBy(A.Outlet("1").Giving(100)));
    }

    [Fact]
    public async Task Headroom_is_added_and_rounded_up()
    {
        // 81 mA and a quarter more are 101.25.
        await Ask.Best(Echo(80).FedBy(A.Outlet("1").Giving(100)).WithHeadroom(0.25m));
        await Ask.Impossible(Echo(81).FedBy(A.Outlet("1").Giving(101)).WithHeadroom(0.25m));
        await Ask.Best(Echo(81).FedBy(A.Outlet("1").Giving(102)).WithHeadroom(0.25m));
    }

    [Fact]
    public async Task A_selectable_outlet_is_set_to_what_the_device_takes()
    {
        var best = await Ask.Best(Echo(100, 18, 24).FedBy(A.Outlet("1").AtVolts(9, 12, 18)));

        Assert.Equal(18.V, Assert.Single(best.Rig.HookUp).Settings[0]);
    }

    [Theory]
    [InlineData(9, 12, 13, false)]
    [InlineData(9, 12, 12, true)]
    [InlineData(9, 12, 9, true)]
    [InlineData(9, 12, 8, false)]
    public async Task The_volts_lie_within_the_range_both_ends_allowed(int min, int max, int volts, bool isFed)
    {
        var outcome = await Ask.Planner(Echo(50, min, max).FedBy(A.Outlet("1").AtVolts(volts)));

        Assert.Equal(isFed, outcome is PlanOutcome.Proposed);
    }

    [Fact]
    public async Task Two_devices_want_two_outlets_without_a_splitter()
    {
        await Ask.Impossible(EchoAndHall(10, 10).FedBy(A.Outlet("1").Giving(500)));
        await Ask.Best(EchoAndHall(10, 10).FedBy(A.Outlet("1").Giving(500), A.Outlet("2").Giving(10)));
    }

    [Fact]
    public async Task A_splitter_shares_an_outlet_up_to_its_current()
    {
        await Ask.Best(EchoAndHall(40, 60).FedBy(A.Outlet("1").Giving(100)).OwningAdapters(splitter: 1));
        await Ask.Impossible(EchoAndHall(41, 60).FedBy(A.Outlet("1").Giving(100)).OwningAdapters(splitter: 1));
    }

    [Fact]
    public async Task Devices_share_an_outlet_only_at_one_setting()
    {
        var draft = A.Draft().With(A.Device("echo").Drawing(10).AtVolts(9, 9).Doing("delay"), A.Device("hall").Drawing(10).AtVolts(12, 12).Doing("reverb")).Needing("delay", "reverb");

        await Ask.Impossible(draft.FedBy(A.Outlet("1").AtVolts(9, 12)).OwningAdapters(splitter: 1));
        await Ask.Best(draft.FedBy(A.Outlet("1").AtVolts(9, 12), A.Outlet("2").AtVolts(9, 12)));
    }

    [Fact]
    public async Task A_positive_device_takes_a_reversing_lead_and_an_isolated_outlet_of_its_own()
    {
        var fuzz = A.Draft().With(A.Device("fuzz").Drawing(5, Polarity.Positive).Doing("drive.fuzz")).Needing("drive.fuzz");

        Assert.True(Assert.Single((await Ask.Best(fuzz.FedBy(A.Outlet("1")).OwningAdapters(reverse: 1))).Rig.HookUp).Reversed);
        await Ask.Impossible(fuzz.FedBy(A.Outlet("1")));
        await Ask.Impossible(fuzz.FedBy(A.Outlet("1").Sharing("s"), A.Outlet("2").Sharing("s")).OwningAdapters(reverse: 1));
        await Ask.Best(fuzz.FedBy(A.Outlet("1").Sharing("alone")).OwningAdapters(reverse: 1));
        await Ask.Best(fuzz.FedBy(A.Outlet("1").Positive()));
        await Ask.Impossible(fuzz.FedBy(A.Outlet("1").Positive().Sharing("s"), A.Outlet("2").Sharing("s")));
    }

    [Fact]
    public async Task A_positive_device_is_never_split_with_another()
    {
        var both = A.Draft().With(A.Device("fuzz").Drawing(5, Polarity.Positive).Doing("drive"), A.Device("echo").Drawing(5).Doing("delay")).Needing("drive", "delay");

        await Ask.Impossible(both.FedBy(A.Outlet("1").Giving(500)).OwningAdapters(reverse: 1, splitter: 1));
        await Ask.Best(both.FedBy(A.Outlet("1"), A.Outlet("2")).OwningAdapters(reverse: 1));
    }

    [Fact]
    public async Task A_battery_is_used_only_where_no_outlet_is_left()
    {
        var draft = A.Draft().With(A.Device("echo").Drawing(50).Doing("delay"), A.Device("hall").Drawing(50).OnBatteryToo().Doing("reverb")).Needing("delay", "reverb");

        Assert.Equal("hall", Assert.Single((await Ask.Best(draft.FedBy(A.Outlet("1")))).Rig.HookUp, feed => feed.OnBattery).Device.Value);
        Assert.DoesNotContain((await Ask.Best(draft.FedBy(A.Outlet("1"), A.Outlet("2")))).Rig.HookUp, feed => feed.OnBattery);
        await Ask.Impossible(draft);
    }

    [Fact]
    public async Task All_outlets_together_give_no_more_than_the_supply()
    {
        var supply = A.Supply(A.Outlet("1"), A.Outlet("2"));

        await Ask.Best(EchoAndHall(80, 70).FedBy(supply.Totalling(150)));
        await Ask.Impossible(EchoAndHall(80, 70).FedBy(supply.Totalling(149)));
    }

    [Fact]
    public async Task Alternating_current_goes_to_nothing_else_and_from_nothing_else()
    {
        var ac = A.Draft().With(A.Device("tape").Drawing(50, type: CurrentType.Ac).Doing("delay")).Needing("delay");

        await Ask.Best(ac.FedBy(A.Outlet("1").Alternating()));
        await Ask.Impossible(ac.FedBy(A.Outlet("1")));
        await Ask.Impossible(Echo(50).FedBy(A.Outlet("1").Alternating()));
        await Ask.Best((ac with { Devices = [A.Device("tape").Drawing(50, Polarity.Positive, CurrentType.Ac).Doing("delay")] }).FedBy(A.Outlet("1").Alternating()));
    }

    private static RigProblemDraft Echo(int current, int minVolts = 9, int maxVolts = 9) =>
        A.Draft().With(A.Device("echo").Drawing(current).AtVolts(minVolts, maxVolts).Doing("delay")).Needing("delay");

    private static RigProblemDraft EchoAndHall(int echo, int hall) =>
        A.Draft().With(A.Device("echo").Drawing(echo).Doing("delay"), A.Device("hall").Drawing(hall).Doing("reverb")).Needing("delay", "reverb");
}
