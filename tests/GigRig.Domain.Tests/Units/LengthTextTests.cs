using CsCheck;
using GigRig.Domain.Units;

namespace GigRig.Domain.Tests.Units;

public sealed class LengthTextTests
{
    /// <summary>
    /// Published conversions: the inch is 25.4 mm exactly, by the international yard and pound agreement of 1959 (NIST SP 811, appendix B, lists
    /// the factor as exact). A foot is 12 inches, 304.8 mm; a yard 36 inches, 914.4 mm. Rounded here to whole millimetres.
    /// </summary>
    [Theory]
    [InlineData("1 in", 25)]
    [InlineData("10 in", 254)]
    [InlineData("100 in", 2540)]
    [InlineData("12 in", 305)]
    [InlineData("36 in", 914)]
    [InlineData("1 ft", 305)]
    [InlineData("3 feet", 914)]
    [InlineData("10 ft", 3048)]
    public void Inches_convert_as_published(string text, int millimetres) => Reads(text, LengthUnit.Millimetres, millimetres);

    [Theory]
    [InlineData("140", 140)]
    [InlineData("140 mm", 140)]
    [InlineData("140MM", 140)]
    [InlineData("14 cm", 140)]
    [InlineData("1.4 m", 1400)]
    [InlineData("1,250 m", 1250)]
    [InlineData("14,5 cm", 145)]
    [InlineData("72.5", 73)]
    [InlineData("72,4", 72)]
    [InlineData("0", 0)]
    [InlineData(".5 cm", 5)]
    [InlineData("  140   mm ", 140)]
    public void Metric_lengths_round_to_whole_millimetres_halves_up(string text, int millimetres) => Reads(text, LengthUnit.Millimetres, millimetres);

    /// <summary>5 1/2 in are 139.7 mm.</summary>
    [Theory]
    [InlineData("5 1/2\"")]
    [InlineData("5-1/2 in")]
    [InlineData("5½″")]
    [InlineData("5 ½”")]
    [InlineData("5 1⁄2 in.")]
    [InlineData("5.5 inches")]
    [InlineData("5,5 inch")]
    [InlineData("11/2 in")]
    [InlineData("5.5''")]
    [InlineData("5.500 in")]
    public void Five_and_a_half_inches_can_be_typed_in_many_ways(string text) => Reads(text, LengthUnit.Millimetres, 140);

    [Theory]
    [InlineData("½", 13)]
    [InlineData("2 3/8", 60)]
    [InlineData("4⅜", 111)]
    [InlineData("140 mm", 140)]
    public void Without_a_unit_the_owners_unit_is_meant(string text, int millimetres) => Reads(text, LengthUnit.Inches, millimetres);

    [Theory]
    [InlineData("", "\"\" is not a length. Type one such as 140 mm, 14 cm, 5.5 in or 5 1/2\".")]
    [InlineData(null, "\"\" is not a length. Type one such as 140 mm, 14 cm, 5.5 in or 5 1/2\".")]
    [InlineData("wide", "\"wide\" is not a length. Type one such as 140 mm, 14 cm, 5.5 in or 5 1/2\".")]
    [InlineData("-5 mm", "\"-5 mm\" is not a length. Type one such as 140 mm, 14 cm, 5.5 in or 5 1/2\".")]
    [InlineData("5 1/0 in", "\"5 1/0 in\" divides by zero. Type a fraction such as 1/2.")]
    [InlineData("1,000", "\"1,000\" can be read in two ways. Type it without the separator.")]
    [InlineData("1.200 mm", "\"1.200 mm\" can be read in two ways. Type it without the separator.")]
    [InlineData("1001 m", "\"1001 m\" is more than 1000000 mm. Type a shorter length.")]
    public void What_is_not_a_length_is_quoted_with_advice(string? text, string error)
    {
        Assert.False(LengthText.TryParse(text, LengthUnit.Millimetres, out var length, out var said));
        Assert.Equal((error, Millimetres.Zero), (said, length));
    }

    [Theory]
    [InlineData("5 1/2 1/2 in")]
    [InlineData("5.5.5")]
    [InlineData("5 kg")]
    [InlineData("1 2")]
    [InlineData("5½½")]
    [InlineData("51½/2")]
    [InlineData("999999999999")]
    public void Nonsense_is_not_guessed_at(string text) => Assert.False(LengthText.TryParse(text, LengthUnit.Millimetres, out _, out _));

    [Fact]
    public void A_length_reads_well_in_both_units()
    {
        Assert.Equal("140 mm", LengthText.Format(140.Mm, LengthUnit.Millimetres));
        Assert.Equal("5.51 in", LengthText.Format(140.Mm, LengthUnit.Inches));
        Assert.Equal("10 in", LengthText.Format(254.Mm, LengthUnit.Inches));
    }

    [Fact]
    public void What_is_shown_reads_back_as_the_same_length() =>
        Gen.Select(Gen.Int[0, 100_000], Gen.Enum<LengthUnit>(), Gen.Enum<LengthUnit>()).Sample((value, shown, assumed) =>
            LengthText.TryParse(LengthText.Format(value.Mm, shown), assumed, out var length, out _) && length == value.Mm);

    [Fact]
    public void No_text_makes_it_throw() =>
        Gen.OneOf(Gen.String, Gen.String["0123456789 .,/-'\"½⅞⁄″mcin"]).Sample(text => LengthText.TryParse(text, LengthUnit.Inches, out _, out var error) == (error.Length == 0));

    private static void Reads(string text, LengthUnit unit, int millimetres)
    {
        Assert.True(LengthText.TryParse(text, unit, out var length, out var error), error);
        Assert.Equal(millimetres.Mm, length);
    }
}
