using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
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
        Assert.EndsWith("parallel lead", line.Lead, StringComparison.Ordinal);
    }

    [Fact]
    public void Outlets_joined_in_series_say_what_they_add_up_to() =>
        Assert.Equal("9 V + 9 V = 18 V", Line(A.Rig().FeedingSeries("preamp", 9, "5", "6")).Volts);

    [Fact]
    public void A_battery_takes_no_lead_and_a_fresh_battery() =>
        Assert.Equal(("own battery", "", "none; fit a fresh battery"), (Line(A.Rig().OnBattery("boost")).Outlet, Line(A.Rig().OnBattery("boost")).Volts, Line(A.Rig().OnBattery("boost")).Lead));

    [Fact]
    public void Devices_on_one_outlet_name_each_other()
    {
        var lines = HookUpSheet.Of(Problem, A.Rig().Feeding("tuner", "1").Feeding("boost", "1")).Lines;

        Assert.Equal(["DC power lead, centre negative; splitter shared with boost", "DC power lead, centre negative; splitter shared with tuner"], lines.Select(line => line.Lead));
    }

    private static HookUpLine Line(Rig rig) => Assert.Single(HookUpSheet.Of(Problem, rig).Lines);
}
