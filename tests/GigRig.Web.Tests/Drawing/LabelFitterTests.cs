using CsCheck;
using GigRig.Web.Drawing;
using Xunit;

namespace GigRig.Web.Tests.Drawing;

public sealed class LabelFitterTests
{
    [Fact]
    public void All_words_stand_in_full_where_there_is_room()
    {
        var label = LabelFitter.Fit(120, 120, 8, "Twin echo", "Delay", "4: 9 V");

        Assert.False(label.Shortened);
        Assert.Equal(["Twin echo", "Delay", "4: 9 V"], label.Lines.Select(line => line.Text));
    }

    [Fact]
    public void A_long_name_runs_on_to_a_second_line()
    {
        var label = LabelFitter.Fit(70, 120, 8, "Thunderhead distortion", "Drive", null);

        Assert.Equal(["Thunderhead", "distortion", "Drive"], label.Lines.Select(line => line.Text));
        Assert.False(label.Sideways);
    }

    [Fact]
    public void A_body_too_narrow_to_write_across_is_written_along()
    {
        var label = LabelFitter.Fit(30, 120, 8, "Metronome", "", null);

        Assert.True(label.Sideways);
        Assert.Equal("Metronome", Assert.Single(label.Lines).Text);
    }

    [Fact]
    public void What_does_not_fit_is_cut_with_a_sign_that_it_was()
    {
        var label = LabelFitter.Fit(60, 40, 10, "Metronome", "Tuner", null);

        Assert.True(label.Shortened);
        Assert.Equal("Metrono…", Assert.Single(label.Lines).Text);
    }

    [Fact]
    public void No_letter_is_cut_in_half()
    {
        var label = LabelFitter.Fit(30, 40, 10, "a🎸🎸🎸🎸", "", null);

        Assert.DoesNotContain(label.Lines, line => line.Text.Where(char.IsSurrogate).Count() % 2 != 0);
    }

    [Fact]
    public void No_line_is_ever_wider_than_the_body_and_nothing_is_lost_unsaid()
    {
        var sizes = Gen.Select(Gen.Int[1, 400], Gen.Int[1, 400], Gen.Int[4, 30]);
        var words = Gen.String[Gen.Char["ab "], 0, 40];
        Gen.Select(sizes, words, words, words).Sample((size, name, role, outlet) =>
        {
            var (width, height, text) = size;
            var label = LabelFitter.Fit(width, height, text, name, role, outlet);
            var along = label.Sideways ? height : width;
            Assert.All(label.Lines, line => Assert.True(line.Text.Length * text * LabelFitter.LetterWidth <= along));
            var said = string.Join(' ', label.Lines.Select(line => line.Text));
            Assert.True(label.Shortened || said == string.Join(' ', new[] { name, role, outlet }.Where(part => part.Length > 0)));
        });
    }
}
