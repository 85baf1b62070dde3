using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules;

public sealed class SupplyLoadTests
{
    private static readonly RigProblemDraft Draft = A.Draft()
        .With(A.Device("tuner").Drawing(30), A.Device("echo").Drawing(150), A.Device("preamp").Drawing(60).AtVolts(18, 18), A.Device("boost").Drawing(8).OnBatteryToo())
        .FedBy(A.Outlet("1"), A.Outlet("2"), A.Outlet("3"), A.Outlet("4").Giving(80), A.Outlet("5"), A.Outlet("6"))
        .OwningAdapters(parallel: 9, series: 9, splitter: 9);

    private static readonly Rig Rig = A.Rig()
        .FeedingSeries("preamp", 9, "4", "5").FeedingParallel("echo", 9, "2", "3").Feeding("tuner", "1").Feeding("boost", "1");

    [Fact]
    public void What_is_left_is_told_for_each_outlet_in_the_order_of_the_supply() => Assert.Equal(
        ["1: 38 of 100", "2 3: 150 of 200", "4 5: 60 of 80"],
        SupplyLoad.Of(Draft.Problem(), Rig).Outlets.Select(load => $"{string.Join(' ', load.Outlets.Select(outlet => outlet.Id))}: {load.Draw.Value} of {load.Gives.Value}"));

    [Fact]
    public void Outlets_out_of_use_are_told_as_well() =>
        Assert.Equal("6", Assert.Single(SupplyLoad.Of(Draft.Problem(), Rig).Unused).Id);

    [Fact]
    public void In_all_a_series_pair_counts_on_both_outlets()
    {
        var load = SupplyLoad.Of(Draft.Problem(), Rig);

        Assert.Equal((308.MilliA, 580.MilliA, 272.MilliA), (load.Taken, load.Gives, load.Left));
    }

    [Fact]
    public void The_total_of_the_supply_counts_where_it_is_said() =>
        Assert.Equal(400.MilliA, SupplyLoad.Of((Draft with { Supply = Draft.Supply!.Totalling(400) }).Problem(), Rig).Gives);

    [Fact]
    public void Headroom_is_part_of_the_draw() =>
        Assert.Equal(48.MilliA, SupplyLoad.Of(Draft.WithHeadroom(0.25m).Problem(), Rig).Outlets[0].Draw);

    [Fact]
    public void A_device_on_its_battery_takes_nothing() =>
        Assert.Empty(SupplyLoad.Of(Draft.Problem(), A.Rig().OnBattery("boost")).Outlets);

    [Fact]
    public void Without_a_supply_there_is_nothing() =>
        Assert.Equal(new SupplyLoad([], [], Milliamps.Zero, Milliamps.Zero), SupplyLoad.Of(A.Draft().Problem(), A.Rig()));
}
