using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;
using Xunit;

namespace GigRig.Web.Tests.Shared.Forms;

public sealed class EntryReaderTests
{
    private readonly EntryReader read = new(LengthUnit.Millimetres);

    [Theory]
    [InlineData("9", 9000)]
    [InlineData("9 V", 9000)]
    [InlineData("7,5", 7500)]
    [InlineData("7.5v", 7500)]
    [InlineData("0.001", 1)]
    public void Volts_are_read_with_comma_or_point_and_with_or_without_the_letter(string typed, int millivolts)
    {
        Assert.Equal(millivolts, read.Volts("min", "Voltage", typed).Value);
        Assert.Empty(read.Errors);
    }

    [Theory]
    [InlineData("", "Voltage is empty. Type volts, such as 9.")]
    [InlineData("nine", "Voltage: \"nine\" is not a voltage. Type a number, such as 9 or 7.5.")]
    [InlineData("9.0001", "Voltage: 9.0001 has more digits than three after the point. Leave some out.")]
    public void Other_volts_are_named_and_said_how_to_mend(string typed, string sentence)
    {
        read.Volts("power/min", "Voltage", typed);

        Assert.Equal([new FieldError("power/min", sentence)], read.Errors);
        Assert.False(read.CanBeJudged);
    }

    [Fact]
    public void Several_volts_stand_side_by_side()
    {
        Assert.Equal([9.V, 12.V, 18.V], read.VoltsList("volts", "Voltage", "9 / 12; 18 V"));
        Assert.Empty(read.Errors);
    }

    [Theory]
    [InlineData("99.50", 9950)]
    [InlineData("120", 12000)]
    [InlineData("0,5", 50)]
    public void Money_is_kept_in_hundredths(string typed, int cents) => Assert.Equal(cents, read.Cents("value", "Value", typed));

    [Theory]
    [InlineData("-1")]
    [InlineData("9.999")]
    [InlineData("a lot")]
    public void What_is_no_amount_is_refused(string typed)
    {
        Assert.Null(read.Cents("value", "Value", typed));
        Assert.Contains($"\"{typed}\" is not an amount", Assert.Single(read.Errors).Sentence);
    }

    [Fact]
    public void An_empty_amount_is_no_amount_and_no_fault()
    {
        Assert.Null(read.Cents("value", "Value", " "));
        Assert.Empty(read.Errors);
    }

    [Theory]
    [InlineData("25", 25_000)]
    [InlineData("12,5 kg", 12_500)]
    public void Kilograms_become_grams(string typed, int grams) => Assert.Equal(grams, read.OptionalKilograms("mass", "Mass", typed)?.Value);

    [Fact]
    public void What_the_domain_complains_of_lands_at_the_field()
    {
        read.Add([new Complaint("/devices/0/jacks/2/at", "900", "0–70", "Jack 3 is off the box.")], "devices/0");

        Assert.Equal([new FieldError("jacks/2/at", "Jack 3 is off the box.")], read.Errors);
    }
}
