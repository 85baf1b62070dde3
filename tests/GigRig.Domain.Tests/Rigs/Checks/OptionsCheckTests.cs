using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class OptionsCheckTests
{
    [Fact]
    public void A_bend_or_a_stage_out_of_range_is_refused()
    {
        Complain.AboutOptions(
            options => options with { Wiring = options.Wiring with { Bend = 1001.Mm } },
            "/options/wiring/bend", "1001", "0 to 1000 mm", "The bend at each end of a lead is 1001 mm; give 0 to 1000 mm.");
        Complain.AboutOptions(
            options => options with { Wiring = options.Wiring with { ToAmp = 100_001.Mm } },
            "/options/wiring/toAmp", "100001", "0 to 100000 mm", "The lead from board to amp is 100001 mm; give 0 to 100000 mm.");
    }

    [Fact]
    public void A_pin_on_nothing_known_is_refused() => Complain.About(
        Complain.Fine.Pinning("clip", "ghost"),
        "/options/pin/1", "ghost", "the id of a device or an off-board thing", "\"ghost\" is pinned but is no device and no off-board thing on offer; correct the id or drop it.");

    [Fact]
    public void The_amp_may_be_pinned_but_not_banned()
    {
        Complain.Nothing(Complain.Fine.Pinning("amp"));
        Complain.About(
            Complain.Fine.Banning("amp"),
            "/options/ban/0", "amp", "the id of a device or an off-board thing", "\"amp\" is banned but is no device and no off-board thing on offer; correct the id or drop it.");
    }

    [Fact]
    public void A_pin_given_twice_is_refused() => Complain.About(
        Complain.Fine.Pinning("echo", "echo"),
        "/options/pin/1", "echo", "once", "echo is pinned twice; keep one.");

    [Fact]
    public void Pinned_and_banned_at_once_is_refused() => Complain.About(
        Complain.Fine.Pinning("echo").Banning("clip", "echo"),
        "/options/ban/1", "echo", "not pinned as well", "echo is both pinned and banned; drop one of them.");

    [Theory]
    [InlineData(0, "0")]
    [InlineData(600_001, "600001")]
    [InlineData(1.5, "1.5")]
    public void A_time_limit_is_whole_milliseconds_up_to_ten_minutes(double milliseconds, string shown) => Complain.AboutOptions(
        options => options with { TimeLimit = TimeSpan.FromTicks((long)(milliseconds * TimeSpan.TicksPerMillisecond)) },
        "/options/timeLimit", shown, "1 to 600000 ms", $"The time limit is {shown} ms; give 1 to 600000 whole milliseconds.");

    [Theory]
    [InlineData("-0.1")]
    [InlineData("5.01")]
    public void A_headroom_is_a_fraction_up_to_five(string headroom) => Complain.AboutOptions(
        options => options with { Headroom = decimal.Parse(headroom, System.Globalization.CultureInfo.InvariantCulture) },
        "/options/headroom", headroom, "0 to 5", $"The headroom is {headroom}; give a fraction from 0 to 5, such as 0.25 for a quarter more.");

    [Fact]
    public void A_plug_beyond_twenty_centimetres_is_refused()
    {
        Complain.AboutOptions(
            options => options with { Plugs = PlugSizes.Usual with { Audio = new(201.Mm, 16.Mm) } },
            "/options/plugs/audio/out", "201", "0 to 200 mm", "Audio plugs stand out 201 mm; give 0 to 200 mm.");
        Complain.AboutOptions(
            options => options with { Plugs = PlugSizes.Usual with { Power = new(13.Mm, (-1).Mm) } },
            "/options/plugs/power/width", "-1", "0 to 200 mm", "The width of power plugs is -1 mm; give 0 to 200 mm.");
    }

    [Fact]
    public void Switch_spacing_and_alternatives_have_their_ranges()
    {
        Complain.About(Complain.Fine.SpacingSwitches(501), "/options/switchSpacing", "501", "0 to 500 mm", "The switch spacing is 501 mm; give 0 to 500 mm.");
        Complain.AboutOptions(options => options with { Alternatives = 21 }, "/options/alternatives", "21", "0 to 20", "The number of alternatives is 21; give 0 to 20.");
    }
}
