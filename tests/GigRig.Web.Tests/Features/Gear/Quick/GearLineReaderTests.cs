using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.Web.Features.Gear.Quick;
using GigRig.Web.Shared.Roles;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Quick;

public sealed class GearLineReaderTests
{
    private readonly GearLineReader reader = new(new RoleChoices([]), new(LengthUnit.Millimetres));

    [Fact]
    public void A_box_in_a_line_is_a_device_with_its_guesses_marked()
    {
        var gear = Read((LineField.Name, "Meadow"), (LineField.Size, "compact"), (LineField.Roles, "overdrive"), (LineField.Draw, "9"));

        var device = Assert.IsType<Device>(gear.Thing);
        Assert.Equal(("Meadow", 70.Mm, 122.Mm), (device.Name, device.Size.Width, device.Size.Depth));
        Assert.Equal(9.MilliA, device.Power!.Current);
        Assert.Equal("drive.low", Assert.Single(device.Functions).Role.Key);
        Assert.Equal([Guess.Size, Guess.Height, Guess.Mass, Guess.Jacks, Guess.Switches, Guess.Voltage], gear.Ownership.Guesses);
    }

    [Fact]
    public void A_size_in_figures_is_no_guess() =>
        Assert.DoesNotContain(Guess.Size, Read((LineField.Name, "Meadow"), (LineField.Size, "61 x 111")).Ownership.Guesses);

    [Theory]
    [InlineData("none")]
    [InlineData("0")]
    [InlineData("Passive")]
    public void A_box_without_a_draw_needs_no_power(string draw) =>
        Assert.Null(((Device)Read((LineField.Name, "Glide"), (LineField.Draw, draw)).Thing).Power);

    [Fact]
    public void A_board_is_its_size() =>
        Assert.Equal((600.Mm, 300.Mm), Assert.IsType<Board>(Read((LineField.Kind, "board"), (LineField.Name, "Plank"), (LineField.Size, "60 x 30 cm")).Thing) is var board ? (board.Width, board.Depth) : default);

    [Fact]
    public void A_supply_is_its_outlets() =>
        Assert.Equal(8, Assert.IsType<Supply>(Read((LineField.Kind, "Supplies"), (LineField.Name, "Brick"), (LineField.Outlets, "8 outlets 9 V 100 mA")).Thing).Outlets.Count);

    [Fact]
    public void An_off_board_item_needs_no_more_than_a_name_and_a_role() =>
        Assert.Equal("tuner", Assert.Single(Assert.IsType<OffBoardItem>(Read((LineField.Kind, "off-board item"), (LineField.Name, "Clip"), (LineField.Roles, "tuner")).Thing).Functions).Role.Key);

    [Fact]
    public void An_amp_does_one_thing_at_a_time() =>
        Assert.Equal(["channel", "channel"], Assert.IsType<Amp>(Read((LineField.Kind, "amp"), (LineField.Name, "Combo"), (LineField.Roles, "clean, drive")).Thing).Functions.Select(function => function.Section));

    [Fact]
    public void That_an_amp_has_no_loop_is_a_guess() =>
        Assert.Equal([Guess.Mass, Guess.Loop], Read((LineField.Kind, "amp"), (LineField.Name, "Combo"), (LineField.Roles, "clean")).Ownership.Guesses);

    [Fact]
    public void A_lead_is_its_length_with_what_it_is_for_and_its_plugs_guessed()
    {
        var gear = Read((LineField.Kind, "lead"), (LineField.Name, "Short one"), (LineField.Size, "6 x 15 cm"));

        Assert.Equal(new Lead(new("this"), "Short one", LeadKind.Patch, 150.Mm, PlugShape.Angled, PlugShape.Angled, 6), gear.Thing);
        Assert.Equal([Guess.LeadKind, Guess.Plugs], gear.Ownership.Guesses);
    }

    [Fact]
    public void A_lead_that_says_all_has_no_guesses()
    {
        var gear = Read((LineField.Kind, "loop lead"), (LineField.Name, "To the amp"), (LineField.Depth, "3 m"), (LineField.Plugs, "straight to angled"), (LineField.Count, "2"));

        Assert.Equal(new Lead(new("this"), "To the amp", LeadKind.Loop, 3000.Mm, PlugShape.Straight, PlugShape.Angled, 2), gear.Thing);
        Assert.Empty(gear.Ownership.Guesses);
    }

    [Theory]
    [InlineData("", null)]
    [InlineData("Humbucker", false)]
    [InlineData("single coil", false)]
    [InlineData("active", true)]
    public void An_instrument_is_its_name_and_what_its_pickup_is(string pickup, bool? active)
    {
        var gear = Read((LineField.Kind, "instrument"), (LineField.Name, "Old bass"), (LineField.Pickup, pickup));

        Assert.Equal(new Instrument(new("this"), "Old bass", "Bass", InstrumentFamily.Bass) { Pickup = new(Active: active) }, gear.Thing);
        Assert.Equal([Guess.Family], gear.Ownership.Guesses);
    }

    [Theory]
    [InlineData("guitar cable", "lead")]
    [InlineData("Patch leads", "lead")]
    [InlineData("bass guitar", "instrument")]
    [InlineData("Synth", "instrument")]
    [InlineData("bass amp", null)]
    [InlineData("power supply", null)]
    public void A_kind_may_be_said_more_narrowly(string text, string? kind) => Assert.Equal(kind, KindText.Find(text)?.Word);

    [Fact]
    public void What_is_kept_beside_the_facts_comes_along()
    {
        var own = Read((LineField.Name, "Meadow"), (LineField.Status, "lent out"), (LineField.Tags, "loud, Loud; small"), (LineField.Value, "99,50"), (LineField.Note, "=1+1")).Ownership;

        Assert.Equal((GearStatus.LentOut, "=1+1", 9950), (own.Status, own.Note, own.ValueCents));
        Assert.Equal(["loud", "small"], own.Tags);
    }

    [Theory]
    [InlineData(LineField.Name, "", "The name is empty")]
    [InlineData(LineField.Size, "huge", "\"huge\" is neither a size nor a usual one")]
    [InlineData(LineField.Width, "9000", "9000")]
    [InlineData(LineField.Roles, "xylophone", "\"xylophone\" is no role")]
    [InlineData(LineField.Draw, "lots", "\"lots\" is not a current")]
    [InlineData(LineField.Draw, "20001", "more than 20000 mA")]
    [InlineData(LineField.Volts, "900", "900 V")]
    [InlineData(LineField.Mass, "heavy", "\"heavy\" is not a mass")]
    [InlineData(LineField.Kind, "spaceship", "\"spaceship\" is not a kind")]
    [InlineData(LineField.Status, "lost", "\"lost\" is not a status")]
    [InlineData(LineField.Value, "much", "\"much\" is not an amount")]
    [InlineData(LineField.Count, "2", "\"2\": leads alone are counted")]
    public void A_cell_that_will_not_do_is_named_with_value_and_limit(LineField field, string text, string complaint)
    {
        var cells = new Dictionary<LineField, string> { [LineField.Name] = "Meadow", [LineField.Width] = "70", [LineField.Depth] = "122" };
        cells[field] = text;

        var (gear, faults) = reader.Read(new(cells));

        Assert.Null(gear);
        Assert.Contains(complaint, Assert.Single(faults).Sentence);
    }

    [Theory]
    [InlineData("lead", LineField.Size, "", "A lead needs its length. Type")]
    [InlineData("lead", LineField.Size, "short", "\"short\" does not say how long")]
    [InlineData("lead", LineField.Size, "1000 x 15 cm", "\"1000\" is not a count. Type a whole number from 1 to 999")]
    [InlineData("lead", LineField.Size, "200 m", "100000 mm")]
    [InlineData("lead", LineField.Count, "many", "\"many\" is not a count")]
    [InlineData("lead", LineField.Plugs, "round", "\"round\" does not say plugs")]
    [InlineData("instrument", LineField.Pickup, "loud", "\"loud\" is no pickup")]
    public void A_cell_of_a_lead_or_an_instrument_that_will_not_do_is_named(string kind, LineField field, string text, string complaint)
    {
        var cells = new Dictionary<LineField, string> { [LineField.Kind] = kind, [LineField.Name] = "It", [LineField.Size] = "15 cm" };
        cells[field] = text;

        var (gear, faults) = reader.Read(new(cells));

        Assert.Null(gear);
        Assert.Contains(complaint, Assert.Single(faults).Sentence);
    }

    private NewGear Read(params (LineField Field, string Text)[] cells)
    {
        var (gear, faults) = reader.Read(new(cells.Select(cell => KeyValuePair.Create(cell.Field, cell.Text))));
        Assert.Empty(faults);
        return gear!;
    }
}
