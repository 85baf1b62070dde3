using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class DeviceCheckTests
{
    [Fact]
    public void A_size_out_of_range_is_refused() => Complain.AboutDevice(
        device => device.Sized(5000, 100),
        "/devices/0/width", "5000", "1 to 3000 mm", "The width of device Echo is 5000 mm; give 1 to 3000 mm.");

    [Fact]
    public void A_negative_mass_is_refused() => Complain.AboutDevice(
        device => device.Weighing(-5),
        "/devices/0/mass", "-5", "0 to 200000 g", "The mass of device Echo is -5 g; give 0 to 200000 g.");

    [Fact]
    public void A_name_of_nothing_is_refused() => Complain.AboutDevice(
        device => device with { Name = "" },
        "/devices/0/name", "nothing", "1 to 200 characters", "The name of device 1 is empty; give 1 to 200 characters.");

    [Fact]
    public void A_name_of_201_characters_is_refused_and_cut_short_in_the_telling() => Complain.AboutDevice(
        device => device with { Name = new('x', 201) },
        "/devices/0/name", new string('x', 40) + "…", "1 to 200 characters", $"The name of device {new string('x', 40)}… has 201 characters; give at most 200.");

    [Fact]
    public void A_line_break_in_a_name_is_refused() => Complain.AboutDevice(
        device => device with { Name = "Ec\nho" },
        "/devices/0/name", "Echo", "no control characters", "The name of device Echo holds a line break or another control character; take it out.");

    [Fact]
    public void A_lost_character_in_a_name_is_refused() => Assert.All(
        new[] { "Ec\ud83c", "Ec\ufffd" },
        name => Complain.AboutDevice(
            device => device with { Name = name },
            "/devices/0/name", name, "readable characters", $"The name of device {name} holds a character that was lost on the way; type it again."));

    [Fact]
    public void A_long_name_is_not_cut_through_a_character() => Complain.AboutDevice(
        device => device with { Name = new string('x', 39) + string.Concat(Enumerable.Repeat("\ud83c\udfb8", 100)) },
        "/devices/0/name", new string('x', 39) + "…", "1 to 200 characters", $"The name of device {new string('x', 39)}… has 239 characters; give at most 200.");

    [Fact]
    public void A_device_that_may_stand_in_no_way_is_refused() => Complain.AboutDevice(
        device => device.Turning(),
        "/devices/0/turns", "nothing", "0, 90, 180 or 270, each once", "Device Echo may stand in no way at all; give at least one turn.");

    [Fact]
    public void A_turn_listed_twice_is_refused() => Complain.AboutDevice(
        device => device.Turning(Turn.Half, Turn.Half),
        "/devices/0/turns/1", "180", "0, 90, 180 or 270, each once", "Device Echo lists the turn 180 twice; keep one.");

    [Fact]
    public void A_turn_that_is_no_right_angle_is_refused() => Complain.AboutDevice(
        device => device.Turning((Turn)45),
        "/devices/0/turns/0", "45", "0, 90, 180 or 270, each once", "45, a turn of device Echo, is not a right angle; give 0, 90, 180 or 270.");

    [Fact]
    public void A_range_that_ends_below_its_beginning_is_refused() => Complain.AboutDevice(
        device => device.Drawing(10).AtVolts(12, 9),
        "/devices/0/power/max", "9 V", "at least 12 V", "Device Echo needs 12 V at least and 9 V at most; swap or correct them.");

    [Fact]
    public void A_voltage_out_of_range_is_refused() => Complain.AboutDevice(
        device => device.Drawing(10).AtVolts(9, 61),
        "/devices/0/power/max", "61 V", "0.1 V to 60 V", "The greatest voltage of device Echo is 61 V; give 0.1 V to 60 V.");

    [Theory]
    [InlineData(-1)]
    [InlineData(20_001)]
    public void A_draw_out_of_range_is_refused(int milliamps) => Complain.AboutDevice(
        device => device.Drawing(milliamps),
        "/devices/0/power/current", $"{milliamps}", "0 to 20000 mA", $"The current of device Echo is {milliamps} mA; give 0 to 20000 mA.");

    [Fact]
    public void A_jack_beyond_the_end_of_its_side_is_refused()
    {
        Complain.Nothing(Complain.Fine with { Devices = [A.Device("echo").Sized(70, 120).WithJack(JackUse.In, Side.Left, 120).WithJack(JackUse.In, Side.Rear, 70)] });
        Complain.AboutDevice(
            device => device.Sized(70, 120).WithJack(JackUse.In, Side.Left, 121),
            "/devices/0/jacks/0/at", "121", "0 to 120 mm", "Jack 1 of device Echo is 121 mm along a side of 120 mm; give 0 to 120 mm.");
        Complain.AboutDevice(
            device => device.Sized(70, 120).WithJack(JackUse.In, Side.Rear, 71),
            "/devices/0/jacks/0/at", "71", "0 to 70 mm", "Jack 1 of device Echo is 71 mm along a side of 70 mm; give 0 to 70 mm.");
    }

    [Fact]
    public void A_jack_of_an_unknown_kind_is_refused() => Complain.AboutDevice(
        device => device.WithJack((JackUse)9, Side.Left, 0),
        "/devices/0/jacks/0/carries", "9", "in, out, send, return, power, control", "What jack 1 of device Echo carries is 9; give one of in, out, send, return, power, control.");

    [Fact]
    public void A_switch_off_the_body_is_refused() => Complain.AboutDevice(
        device => device.Sized(70, 120).WithSwitch(35, 121),
        "/devices/0/switches/0/y", "121", "0 to 120 mm", "Switch 1 of device Echo is 121 mm along a side of 120 mm; give 0 to 120 mm.");

    [Fact]
    public void Forty_one_jacks_switches_or_functions_are_too_many()
    {
        Complain.AboutDevice(d => d with { Jacks = Many(41, new Jack(JackUse.In, Side.Left, 0.Mm)) }, "/devices/0/jacks", "41", "at most 40", "Device Echo has 41 jacks; give at most 40.");
        Complain.AboutDevice(d => d with { Switches = Many(41, default(Point)) }, "/devices/0/switches", "41", "at most 40", "Device Echo has 41 switches; give at most 40.");
        Complain.AboutDevice(d => d with { Functions = Many(41, new RoleFunction(new("delay"))) }, "/devices/0/functions", "41", "at most 40", "Device Echo has 41 functions; give at most 40.");
    }

    [Fact]
    public void A_thousand_devices_are_allowed_and_one_more_is_not()
    {
        var thousand = Enumerable.Range(0, 1000).Select(i => A.Device($"d{i}")).ToValueList();
        Complain.Nothing(A.Draft() with { Devices = thousand });
        Complain.About(A.Draft() with { Devices = [.. thousand, A.Device("more")] }, "/devices", "1001", "at most 1000", "The problem has 1001 devices; give at most 1000.");
    }

    private static ValueList<T> Many<T>(int count, T item) => Enumerable.Repeat(item, count).ToValueList();
}
