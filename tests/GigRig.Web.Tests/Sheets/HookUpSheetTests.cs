using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

public sealed class HookUpSheetTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(
            A.Device("tuner").Drawing(30),
            A.Device("fuzz").Drawing(5, Polarity.Positive),
            A.Device("echo").Drawing(180),
            A.Device("preamp").Drawing(60).AtVolts(18, 18),
            A.Device("boost").Drawing(8).OnBatteryToo())
        .FedBy(A.Outlet("1"), A.Outlet("2"), A.Outlet("3"), A.Outlet("4"), A.Outlet("5"), A.Outlet("6"))
        .Problem();

    [Fact]
    public void A_plain_feed_names_outlet_volts_draw_and_lead() =>
        Assert.Equal(
            new HookUpLine(new("tuner"), null, "tuner", "outlet 1", "1: 9 V", "9 V", "30 mA", "DC power lead, centre negative"),
            Line(A.Rig().Feeding("tuner", "1")));

    [Fact]
    public void A_reversed_feed_asks_for_the_reversing_lead_and_says_which_way_round() =>
        Assert.Equal("polarity-reversing lead, centre positive at the device", Line(A.Rig().Feeding("fuzz", "2", reversed: true)).Lead);

    [Fact]
    public void Outlets_joined_in_parallel_are_all_named()
    {
        var line = Line(A.Rig().FeedingParallel("echo", 9, "3", "4"));

        Assert.Equal(("outlets 3 + 4 joined in parallel", "3+4: 9 V", "9 V"), (line.Outlet, line.Tag, line.Volts));
    }

    [Fact]
    public void Outlets_joined_in_series_say_what_they_add_up_to() =>
        Assert.Equal("9 V + 9 V = 18 V", Line(A.Rig().FeedingSeries("preamp", 9, "5", "6")).Volts);

    [Fact]
    public void A_battery_takes_no_lead_and_a_fresh_battery() =>
        Assert.Equal(("own battery", "", "none; fit a fresh battery"), (Line(A.Rig().OnBattery("boost")).Outlet, Line(A.Rig().OnBattery("boost")).Volts, Line(A.Rig().OnBattery("boost")).Lead));

    [Fact]
    public void The_outlets_in_use_say_what_to_set_whom_they_feed_and_what_is_left()
    {
        var sheet = HookUpSheet.Of(Problem, A.Rig().Placing("tuner", 0, 0).Feeding("tuner", "1").FeedingParallel("echo", 9, "3", "4").FeedingSeries("preamp", 9, "5", "6"));

        Assert.Equal(
            ["1, isolated, 9 V: 1 tuner; 70 of 100 mA", "3 + 4, joined in parallel: currents add, 9 V: echo; 20 of 200 mA", "5 + 6, joined in series: volts add, the lesser current counts, 9 V + 9 V = 18 V: preamp; 40 of 100 mA"],
            sheet.Outlets.Select(line => $"{line.Label}, {line.Kind}, {line.Volts}: {string.Join(", ", line.Feeds.Select(feed => feed.Title))}; {line.Left}"));
        Assert.Equal("2 (9 V, 100 mA)", sheet.Free);
        Assert.Equal("330 mA of 600 mA taken, 270 mA left", sheet.InAll);
    }

    [Fact]
    public void Free_outlets_that_are_alike_are_told_together() =>
        Assert.Equal("1, 2, 3, 4, 5, 6 (9 V, 100 mA each)", HookUpSheet.Of(Problem, A.Rig()).Free);

    [Fact]
    public void Devices_on_one_outlet_share_it_through_splitters()
    {
        var line = Assert.Single(HookUpSheet.Of(Problem, A.Rig().Feeding("tuner", "1").Feeding("boost", "1")).Outlets);

        Assert.Equal(["tuner", "boost"], line.Feeds.Select(feed => feed.Title));
        Assert.Equal(("1 splitter: 2 devices share this outlet", "62 of 100 mA"), (line.Through, line.Left));
    }

    [Fact]
    public void An_outlet_that_can_be_set_says_so_and_one_with_a_shared_return_says_with_whom()
    {
        var problem = A.Draft().With(A.Device("tuner").Drawing(30)).FedBy(A.Outlet("1").AtVolts(9, 12).Sharing("s"), A.Outlet("2").Sharing("s")).Problem();

        var line = Assert.Single(HookUpSheet.Of(problem, A.Rig().Feeding("tuner", "1")).Outlets);

        Assert.Equal(("set to 9 V", "shares its return with 2"), (line.Volts, line.Kind));
    }

    [Fact]
    public void An_overloaded_outlet_says_by_how_much() =>
        Assert.Equal("80 mA too much for 100 mA", Assert.Single(HookUpSheet.Of(Problem, A.Rig().Feeding("echo", "1")).Outlets).Left);

    [Theory]
    [InlineData(2100, false)]
    [InlineData(2200, true)]
    public void What_a_lead_loses_is_told_from_two_in_a_hundred(int draw, bool told)
    {
        // Half a metre of 24 AWG there and back is 84.2 mΩ, and 2 % of 9 V are 180 mV: 2.14 A.
        var problem = A.Draft().With(A.Device("tubes").Drawing(draw)).FedBy(A.Outlet("1").Giving(3000)).Problem();

        Assert.Equal(told, Assert.Single(HookUpSheet.Of(problem, A.Rig().Feeding("tubes", "1")).Outlets).Lost.Length > 0);
    }

    [Fact]
    public void A_battery_tells_how_long_as_a_range() =>
        Assert.Equal(
            new BatteryLine("boost", "about 27 to 63 hours at 8 mA", "assumed: 9 V block of 310–500 mAh"),
            Assert.Single(HookUpSheet.Of(Problem, A.Rig().OnBattery("boost")).Batteries));

    [Fact]
    public void A_battery_whose_capacity_the_owner_knows_is_counted_with_that()
    {
        var boost = A.Device("boost").Drawing(10).OnBatteryToo();
        var problem = A.Draft().With(boost with { Power = boost.Power! with { BatteryCapacity = 600 } }).Problem();

        Assert.Equal(
            new BatteryLine("boost", "about 42 to 60 hours at 10 mA", "600 mAh"),
            Assert.Single(HookUpSheet.Of(problem, A.Rig().OnBattery("boost")).Batteries));
    }

    [Fact]
    public void A_battery_of_a_device_whose_draw_is_not_known_makes_no_promise()
    {
        var problem = A.Draft().With(A.Device("boost").Drawing(0).OnBatteryToo()).Problem();

        Assert.Equal("draw not known", Assert.Single(HookUpSheet.Of(problem, A.Rig().OnBattery("boost")).Batteries).Time);
    }

    private static HookUpLine Line(Rig rig) => Assert.Single(HookUpSheet.Of(Problem, rig).Lines);
}
