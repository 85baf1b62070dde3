using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

public sealed class OutletJoiningTests
{
    [Fact]
    public async Task As_many_outlets_are_joined_in_parallel_as_the_draw_takes_and_the_leads_allow()
    {
        var best = await Ask.Best(Rack(450).FedBy(Isolated(5)).OwningAdapters(parallel: 4));

        var feed = Assert.Single(best.Rig.HookUp);
        Assert.Equal((OutletJoin.Parallel, 5), (feed.Join, feed.Outlets.Distinct().Count()));
    }

    [Fact]
    public async Task One_parallel_lead_too_few_and_the_device_cannot_be_fed() =>
        await Ask.Impossible(Rack(450).FedBy(Isolated(5)).OwningAdapters(parallel: 3));

    [Fact]
    public async Task In_parallel_the_currents_add_up()
    {
        await Ask.Best(Rack(200).FedBy(Isolated(2)).OwningAdapters(parallel: 1));
        await Ask.Impossible(Rack(201).FedBy(Isolated(2)).OwningAdapters(parallel: 1));
    }

    [Fact]
    public async Task In_series_the_volts_add_up_and_the_lesser_current_counts()
    {
        Outlet[] uneven = [A.Outlet("1").Giving(100), A.Outlet("2").Giving(250)];

        await Ask.Best(Rack(100, 18).FedBy(uneven).OwningAdapters(series: 1));
        await Ask.Impossible(Rack(101, 18).FedBy(uneven).OwningAdapters(series: 1));
        await Ask.Impossible(Rack(100, 19).FedBy(uneven).OwningAdapters(series: 1));
        await Ask.Impossible(Rack(100, 18).FedBy(uneven));
    }

    [Fact]
    public async Task In_series_the_total_counts_the_current_twice_and_in_parallel_once()
    {
        var two = A.Supply(Isolated(2));

        await Ask.Best(Rack(90, 18).FedBy(two.Totalling(180)).OwningAdapters(series: 1));
        await Ask.Impossible(Rack(90, 18).FedBy(two.Totalling(179)).OwningAdapters(series: 1));
        await Ask.Best(Rack(150).FedBy(two.Totalling(150)).OwningAdapters(parallel: 1));
        await Ask.Impossible(Rack(150).FedBy(two.Totalling(149)).OwningAdapters(parallel: 1));
    }

    [Fact]
    public async Task Outlets_that_share_a_return_are_joined_neither_way()
    {
        Outlet[] shared = [A.Outlet("1").Sharing("s"), A.Outlet("2").Sharing("s")];

        await Ask.Impossible(Rack(150).FedBy(shared).OwningAdapters(9, 9, 9, 9));
        await Ask.Impossible(Rack(50, 18).FedBy(shared).OwningAdapters(9, 9, 9, 9));
    }

    [Fact]
    public async Task Outlets_of_different_polarity_are_not_joined()
    {
        Outlet[] mixed = [A.Outlet("1"), A.Outlet("2").Positive()];

        await Ask.Impossible(Rack(150).FedBy(mixed).OwningAdapters(9, 9, 9, 9));
        await Ask.Impossible(Rack(50, 18).FedBy(mixed).OwningAdapters(9, 9, 9, 9));
    }

    [Fact]
    public async Task Outlets_joined_in_parallel_are_set_alike()
    {
        await Ask.Best(Rack(150, 12).FedBy(A.Outlet("1").AtVolts(9, 12), A.Outlet("2").AtVolts(12, 18)).OwningAdapters(parallel: 1));
        await Ask.Impossible(Rack(150, 12).FedBy(A.Outlet("1").AtVolts(9, 12), A.Outlet("2").AtVolts(9, 18)).OwningAdapters(parallel: 1));
    }

    [Fact]
    public async Task Outlets_in_series_may_be_set_differently()
    {
        var best = await Ask.Best(Rack(50, 21).FedBy(A.Outlet("1").AtVolts(9, 18), A.Outlet("2").AtVolts(9, 12)).OwningAdapters(series: 1));

        Assert.Equal([9, 12], Assert.Single(best.Rig.HookUp).Settings.Select(volts => volts.Value / 1000).Order());
    }

    [Fact]
    public async Task A_joined_and_reversed_feed_takes_both_leads()
    {
        var fuzz = A.Draft().With(A.Device("fuzz").Drawing(150, Polarity.Positive).Doing("drive")).Needing("drive").FedBy(Isolated(2));

        await Ask.Best(fuzz.OwningAdapters(reverse: 1, parallel: 1));
        await Ask.Impossible(fuzz.OwningAdapters(reverse: 1));
        await Ask.Impossible(fuzz.OwningAdapters(parallel: 1));
    }

    private static RigProblemDraft Rack(int draw, int volts = 9) =>
        A.Draft().With(A.Device("rack").Drawing(draw).AtVolts(volts, volts).Doing("delay")).Needing("delay");

    private static Outlet[] Isolated(int count) => [.. Enumerable.Range(1, count).Select(i => A.Outlet($"{i}").Giving(100))];
}
