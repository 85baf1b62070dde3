using System.Text.Json;
using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Guessing;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear;
using GigRig.Web.Features.Gear.Forms;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Forms;

public sealed class DeviceFormTests
{
    [Fact]
    public void A_device_shown_and_read_again_is_the_same()
    {
        var device = A.Device("echo").Sized(84, 130).Drawing(90).Doing("delay", "reverb") with
        {
            Jacks = [new(JackUse.In, Side.Right, 70.Mm), new(JackUse.Power, Side.Rear, 42.Mm)],
            Switches = [new(42.Mm, 20.Mm)],
            Turns = [Turn.None, Turn.Half],
            Bypass = Bypass.Buffered,
            WantsBarePickup = true,
            InputLevel = SignalLevel.Line,
        };
        device = device with { Power = device.Power! with { Battery = true, BatteryCapacity = 550, Digital = true } };
        var form = new DeviceForm();

        form.Show(new(device, new(GearStatus.LentOut, "With Ada", 14_050)));
        var read = form.Read();

        Assert.NotNull(read);
        Assert.Equal(device, read.Thing with { Id = device.Id });
        Assert.Equal(new(GearStatus.LentOut, "With Ada", 14_050), read.Ownership);
    }

    [Fact]
    public void Inches_read_back_to_the_same_millimetres() =>
        Gen.Int[1, 3000].Sample(mm =>
        {
            var form = new DeviceForm { Unit = LengthUnit.Inches };
            form.Show(new(A.Device("box").Sized(mm, mm), new()));
            Assert.Equal(mm, form.Read()?.Thing.Size.Width.Value);
        });

    [Fact]
    public void An_empty_form_names_all_that_is_missing()
    {
        var form = new DeviceForm();

        Assert.Null(form.Read());

        form.Errors.ShowAll();
        Assert.Equal(
            ["name", "width", "depth", "height", "power/current", "functions/0/role"],
            form.Errors.Shown.Select(error => error.Field));
        Assert.Equal("Width is empty. Type a length such as 140 mm or 5 1/2\".", form.Errors.At("width"));
    }

    [Fact]
    public void A_length_that_cannot_be_read_is_quoted()
    {
        var form = new DeviceForm { Width = "wide" };
        form.Changed("width");

        Assert.StartsWith("Width: \"wide\" is not a length.", form.Errors.At("width"));
    }

    [Fact]
    public void What_the_domain_refuses_shows_at_its_field()
    {
        var form = Compact();
        form.Jacks[0].At = "400 mm";
        form.Changed("jacks/0/at");

        Assert.Contains("400", form.Errors.At("jacks/0/at"));
    }

    [Fact]
    public void A_usual_size_fills_in_measures_jacks_and_switch()
    {
        var device = Compact().Read()?.Thing;

        Assert.Equal(new BodySize(70.Mm, 122.Mm, 55.Mm), device?.Size);
        Assert.Equal([JackUse.In, JackUse.Out, JackUse.Power], device!.Jacks.Select(jack => jack.Use));
        Assert.Single(device.Switches);
    }

    [Fact]
    public void Every_usual_size_passes_the_checks() =>
        Assert.All(EnclosureShape.All, shape =>
        {
            var form = Compact();
            form.StartFrom(shape);
            Assert.NotNull(form.Read());
        });

    [Fact]
    public void One_voltage_is_a_range_of_itself()
    {
        var form = Compact();
        form.Power = new() { Min = "9", Current = 20 };
        Assert.Equal((9.V, 9.V), (form.Read()!.Thing.Power!.Min, form.Read()!.Thing.Power!.Max));

        form.Power.Max = "18";
        Assert.Equal(18.V, form.Read()!.Thing.Power!.Max);
    }

    [Fact]
    public void A_passive_device_has_no_power_to_fill_in()
    {
        var form = Compact();
        form.Power = null;

        Assert.Null(form.Read()?.Thing.Power);
        Assert.True(form.Errors.None);
    }

    [Fact]
    public void What_is_typed_survives_being_put_aside_as_text()
    {
        var form = Compact();
        form.Width = "half typed";

        var back = JsonSerializer.Deserialize<DeviceForm>(JsonSerializer.Serialize(form))!;

        Assert.Equal(JsonSerializer.Serialize(form), JsonSerializer.Serialize(back));
        Assert.Equal("half typed", back.Width);
        Assert.Equal(3, back.Jacks.Count);
    }

    private static DeviceForm Compact()
    {
        var form = new DeviceForm { Name = "Box", Functions = [new() { Role = "drive.low" }] };
        form.Power!.Current = 9;
        form.StartFrom(EnclosureShape.All.Single(shape => shape.Word == "Compact"));
        return form;
    }
}
