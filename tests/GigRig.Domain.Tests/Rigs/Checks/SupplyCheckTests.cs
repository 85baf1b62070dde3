using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class SupplyCheckTests
{
    [Fact]
    public void A_supply_under_or_on_top_needs_a_size()
    {
        Complain.AboutSupply(
            supply => supply with { Mount = SupplyMount.Under },
            "/supply/width", "nothing", "required", "Supply supply goes under the board but has no size; give its width, depth and height.");
        Complain.AboutSupply(
            supply => supply with { Mount = SupplyMount.Top },
            "/supply/width", "nothing", "required", "Supply supply goes on top of the board but has no size; give its width, depth and height.");
    }

    [Fact]
    public void A_size_is_checked_where_there_is_one() => Complain.AboutSupply(
        supply => supply.Mounted(SupplyMount.Off, 100, 100, 0),
        "/supply/height", "0", "1 to 3000 mm", "The height of supply supply is 0 mm; give 1 to 3000 mm.");

    [Fact]
    public void A_total_of_nothing_is_refused() => Complain.AboutSupply(
        supply => supply.Totalling(0),
        "/supply/totalCurrent", "0", "1 to 1280000 mA", "The total current of supply supply is 0 mA; give 1 to 1280000 mA.");

    [Fact]
    public void Two_outlets_of_one_id_are_refused() => Complain.AboutSupply(
        supply => supply with { Outlets = [A.Outlet("1"), A.Outlet("2"), A.Outlet("1")] },
        "/supply/outlets/2/id", "1", "once", "Outlet 1 is there twice; give each outlet an id of its own.");

    [Fact]
    public void An_outlet_without_a_name_is_refused() => Complain.AboutOutlet(
        outlet => outlet with { Id = " " },
        "/supply/outlets/0/id", "nothing", "1 to 100 characters", "The id of outlet 1 is empty; give 1 to 100 characters.");

    [Fact]
    public void An_outlet_without_a_voltage_is_refused() => Complain.AboutOutlet(
        outlet => outlet with { Volts = [] },
        "/supply/outlets/0/volts", "nothing", "at least one voltage", "Outlet 1 has no voltage; give at least one.");

    [Theory]
    [InlineData(99, "0.099 V")]
    [InlineData(60_001, "60.001 V")]
    public void A_voltage_out_of_range_is_refused(int millivolts, string shown) => Complain.AboutOutlet(
        outlet => outlet with { Volts = [9.V, millivolts.MilliV] },
        "/supply/outlets/0/volts/1", shown, "0.1 V to 60 V", $"Setting 2 of outlet 1 is {shown}; give 0.1 V to 60 V.");

    [Fact]
    public void The_ends_of_the_range_are_allowed() =>
        Complain.Nothing(A.Draft().FedBy(A.Outlet("1") with { Volts = [100.MilliV, 60.V], Current = 20_000.MilliA }));

    [Theory]
    [InlineData(0)]
    [InlineData(20_001)]
    public void An_outlet_current_out_of_range_is_refused(int milliamps) => Complain.AboutOutlet(
        outlet => outlet.Giving(milliamps),
        "/supply/outlets/0/current", $"{milliamps}", "1 to 20000 mA", $"The current of outlet 1 is {milliamps} mA; give 1 to 20000 mA.");

    [Fact]
    public void A_group_of_no_name_is_refused() => Complain.AboutOutlet(
        outlet => outlet.Sharing(""),
        "/supply/outlets/0/group", "nothing", "1 to 100 characters", "The group of outlet 1 is empty; give 1 to 100 characters.");

    [Fact]
    public void Sixty_five_outlets_are_too_many() => Complain.AboutSupply(
        supply => supply with { Outlets = Enumerable.Range(0, 65).Select(i => A.Outlet($"{i}")).ToValueList() },
        "/supply/outlets", "65", "at most 64", "Supply supply has 65 outlets; give at most 64.");

    [Theory]
    [InlineData(-1)]
    [InlineData(100)]
    public void Adapters_are_counted_from_none_to_ninety_nine(int count) => Complain.About(
        Complain.Fine.OwningAdapters(series: count),
        "/adapters/series", $"{count}", "0 to 99", $"The number of series leads is {count}; give 0 to 99.");

    [Fact]
    public void A_mount_that_is_no_mount_is_refused() => Complain.AboutSupply(
        supply => supply with { Mount = (SupplyMount)7, Size = new(1.Mm, 1.Mm, 1.Mm) },
        "/supply/mount", "7", "under, top, off", "The mount of supply supply is 7; give one of under, top, off.");
}
