using CsCheck;
using GigRig.Domain.Units;

namespace GigRig.Domain.Tests.Units;

public sealed class FootprintTextTests
{
    /// <summary>
    /// The inch figures are footprints of two enclosures as a published list gives them, with the millimetres of 25.4 mm to the inch (NIST SP 811): 2.7 × 4.65 in
    /// and 5.5 × 6.8 in.
    /// </summary>
    [Theory]
    [InlineData("2.7 x 4.65 in", 69, 118)]
    [InlineData("5.5 in × 6.8 in", 140, 173)]
    [InlineData("5 1/2 x 6.8\"", 140, 173)]
    [InlineData("70 x 122", 70, 122)]
    [InlineData("70x122mm", 70, 122)]
    [InlineData("60 x 30 cm", 600, 300)]
    [InlineData("6 cm by 112 mm", 60, 112)]
    [InlineData("70*122", 70, 122)]
    public void Width_and_depth_are_read_in_one_breath(string text, int width, int depth)
    {
        Assert.True(FootprintText.TryParse(text, LengthUnit.Millimetres, out var across, out var back, out var height, out var error), error);
        Assert.Equal((width.Mm, depth.Mm, null), (across, back, height));
    }

    [Fact]
    public void A_third_length_is_the_height()
    {
        Assert.True(FootprintText.TryParse("7 x 12.2 x 5.5 cm", LengthUnit.Millimetres, out var width, out var depth, out var height, out _));
        Assert.Equal((70.Mm, 122.Mm, 55.Mm), (width, depth, height));
    }

    [Fact]
    public void Bare_numbers_are_in_the_owners_unit()
    {
        Assert.True(FootprintText.TryParse("2 x 4", LengthUnit.Inches, out var width, out var depth, out _, out _));
        Assert.Equal((51.Mm, 102.Mm), (width, depth));
    }

    [Theory]
    [InlineData("", "is not a size")]
    [InlineData("compact", "is not a size")]
    [InlineData("70", "is not a size")]
    [InlineData("1 x 2 x 3 x 4", "is not a size")]
    [InlineData("70 x broad", "is not a length")]
    [InlineData("70 x", "is not a length")]
    public void What_is_no_size_is_said_to_be_none(string text, string complaint)
    {
        Assert.False(FootprintText.TryParse(text, LengthUnit.Millimetres, out _, out _, out _, out var error));
        Assert.Contains(complaint, error);
    }

    [Fact]
    public void Any_size_that_is_written_is_read_back() => Gen.Select(Gen.Int[1, 3000], Gen.Int[1, 3000], Gen.OneOf(" x ", "×", " * ")).Sample((width, depth, times) =>
        FootprintText.TryParse($"{width}{times}{depth} mm", LengthUnit.Inches, out var across, out var back, out _, out _) && (across, back) == (width.Mm, depth.Mm));

    [Fact]
    public void No_text_makes_it_fail() => Gen.String.Sample(text => FootprintText.TryParse(text, LengthUnit.Millimetres, out _, out _, out _, out var error) || error.Length > 0);
}
