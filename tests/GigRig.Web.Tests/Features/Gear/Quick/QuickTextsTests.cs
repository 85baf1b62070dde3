using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.Web.Features.Gear.Quick;
using GigRig.Web.Shared.Roles;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Quick;

/// <summary>The small texts a line is made of.</summary>
public sealed class QuickTextsTests
{
    private static readonly RoleChoices Roles = new([new(new("bird-song"), "Bird song")]);

    [Theory]
    [InlineData("8 outlets 9 V 100 mA", 8, 9000, 100)]
    [InlineData("8 x 9V 100mA", 8, 9000, 100)]
    [InlineData("8x9V 100mA", 8, 9000, 100)]
    [InlineData("8 outlets, 9 V, 100 mA", 8, 9000, 100)]
    [InlineData("8 outlets at 9 V DC at 100 mA", 8, 9000, 100)]
    [InlineData("9V 0.5A", 1, 9000, 500)]
    [InlineData("2 ways 7,5 V 1 A", 2, 7500, 1000)]
    public void Equal_outlets_are_counted(string text, int count, int millivolts, int milliamps)
    {
        Assert.True(OutletsText.TryParse(text, out var outlets, out var error), error);
        Assert.Equal(count, outlets.Count);
        Assert.All(outlets, outlet => Assert.Equal((millivolts.MilliV, milliamps.MilliA, CurrentType.Dc), (Assert.Single(outlet.Volts), outlet.Current, outlet.Type)));
        Assert.Equal(Enumerable.Range(1, count).Select(i => $"{i}"), outlets.Select(outlet => outlet.Id));
    }

    [Fact]
    public void Different_outlets_stand_with_a_plus_between()
    {
        Assert.True(OutletsText.TryParse("4 x 9 V 100 mA + 2 x 9/12/18 V 500 mA + 1 x 9 V AC 1 A", out var outlets, out _));
        Assert.Equal(7, outlets.Count);
        Assert.Equal([9.V, 12.V, 18.V], outlets[4].Volts);
        Assert.Equal((CurrentType.Ac, 1000.MilliA), (outlets[6].Type, outlets[6].Current));
    }

    [Theory]
    [InlineData("")]
    [InlineData("eight")]
    [InlineData("8 outlets 9 V")]
    [InlineData("8 outlets 100 mA")]
    [InlineData("65 x 9 V 100 mA")]
    [InlineData("9 V 100 mA + nonsense")]
    public void What_says_no_outlets_is_said_to_say_none(string text)
    {
        Assert.False(OutletsText.TryParse(text, out _, out var error));
        Assert.Contains("Type", error);
    }

    /// <summary>One pound is 453.59237 g and one ounce 28.349523125 g, exactly (NIST SP 811, appendix B).</summary>
    [Theory]
    [InlineData("1 lb", 454)]
    [InlineData("10 lbs", 4536)]
    [InlineData("1 oz", 28)]
    [InlineData("100 oz", 2835)]
    [InlineData("0,4 kg", 400)]
    [InlineData("400", 400)]
    [InlineData("400g", 400)]
    public void Masses_convert_as_published(string text, int grams)
    {
        Assert.True(MassText.TryParse(text, 1, out var mass, out var error), error);
        Assert.Equal(grams.G, mass);
    }

    [Theory]
    [InlineData("heavy")]
    [InlineData("-5 g")]
    [InlineData("5 st")]
    [InlineData("99999999 kg")]
    public void What_is_no_mass_is_said_to_be_none(string text)
    {
        Assert.False(MassText.TryParse(text, 1, out _, out var error));
        Assert.Contains(text, error);
    }

    [Theory]
    [InlineData("tuner", "tuner")]
    [InlineData("Low gain drive", "drive.low")]
    [InlineData("drive", "drive")]
    [InlineData("echo + Hall", "delay", "reverb")]
    [InlineData("overdrive, clean boost", "drive.low", "boost")]
    [InlineData("distortion", "drive.high")]
    [InlineData("bird song", "bird-song")]
    [InlineData("drive.high/drive.high", "drive.high")]
    [InlineData("")]
    public void Roles_are_known_by_title_key_and_what_players_call_them(string text, params string[] keys)
    {
        Assert.True(RolesText.TryParse(text, Roles, out var functions, out var error), error);
        Assert.Equal(keys, functions.Select(function => function.Role.Key));
    }

    [Theory]
    [InlineData("xylophone", "is no role that is known")]
    [InlineData("oct", "Did you mean")]
    public void An_unknown_role_is_named_with_what_it_may_have_been(string text, string complaint)
    {
        Assert.False(RolesText.TryParse(text, Roles, out _, out var error));
        Assert.Contains(complaint, error);
    }

    /// <summary>A foot is 304.8 mm and an inch 25.4 mm, exactly (NIST SP 811, appendix B).</summary>
    [Theory]
    [InlineData("15 cm", 1, 150)]
    [InlineData("6 x 15 cm", 6, 150)]
    [InlineData("6×6 in", 6, 152)]
    [InlineData("2 of 10 ft", 2, 3048)]
    [InlineData("4 pcs 0.3 m", 4, 300)]
    [InlineData("150", 1, 150)]
    public void Leads_are_counted_and_long(string text, int count, int millimetres)
    {
        Assert.True(LeadText.TryParse(text, LengthUnit.Millimetres, out var counted, out var length, out var error), error);
        Assert.Equal((count, millimetres.Mm), (counted, length));
    }

    [Theory]
    [InlineData("angled", PlugShape.Angled, PlugShape.Angled)]
    [InlineData("Straight/Angled", PlugShape.Straight, PlugShape.Angled)]
    [InlineData("right-angled to straight", PlugShape.Angled, PlugShape.Straight)]
    [InlineData("right angle plugs", PlugShape.Angled, PlugShape.Angled)]
    [InlineData("slim at both ends", null, null)]
    [InlineData("slim, both ends", PlugShape.Slim, PlugShape.Slim)]
    [InlineData("flat and flat and flat", null, null)]
    [InlineData("ends", null, null)]
    public void Plugs_are_said_for_one_end_or_both(string text, PlugShape? first, PlugShape? second)
    {
        var heard = "";
        var plugs = LeadText.Plugs(text, sentence => heard = sentence);

        Assert.Equal((first, second), (plugs?.First, plugs?.Second));
        Assert.Equal(plugs is null, heard.Contains(text, StringComparison.Ordinal));
    }

    [Fact]
    public void No_text_makes_them_fail() => Gen.String.Sample(text =>
    {
        OutletsText.TryParse(text, out _, out _);
        MassText.TryParse(text, 1, out _, out _);
        LeadText.TryParse(text, LengthUnit.Millimetres, out _, out _, out _);
        LeadText.Plugs(text, _ => { });
        PickupText.Read(text, _ => { });
        RolesText.TryParse(text, Roles, out _, out _);
        CurrentText.Read(text, _ => { });
    });
}
