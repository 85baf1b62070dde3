using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

public sealed class LeadSheetTests
{
    [Fact]
    public void Each_lead_says_where_it_goes_how_long_it_must_be_and_what_to_take()
    {
        var draft = A.Draft(A.Board(900)).Through(A.Amp().Looped() with { Footswitch = true }).With(A.Device("a").WithAudioJacks(), A.Device("b").WithAudioJacks(), A.Device("c")) with
        {
            Leads = [A.Lead("stage") with { Name = "Stage lead", Kind = LeadKind.Instrument, Length = 6000.Mm, FirstPlug = PlugShape.Slim, SecondPlug = PlugShape.Slim }],
        };

        var sheet = LeadSheet.Of(LeadPlan.Of(draft.Problem(), A.Rig().Placing("a", 400, 0).Placing("b", 100, 0).Placing("c", 700, 0).Chained("a b", "c")), LengthUnit.Millimetres);

        // The patch lead: 170 mm of way, 15 mm of bend at each end and 20 mm of slack; made, it takes 25 mm more in each plug.
        Assert.Equal(
            [
                new LeadLine("", "instrument", "1 a, input", "6 m", "Stage lead, 6 m", false),
                new LeadLine("a", "1 a, output", "2 b, input", "22 cm", "buy 30 cm, or make one of 27 cm of cable", true),
                new LeadLine("", "2 b, output", "amp, input", "3 m", "buy 3 m", true),
                new LeadLine("", "amp, send", "3 c, input", "3 m", "buy 3 m", true),
                new LeadLine("", "3 c, output", "amp, return", "3 m", "buy 3 m", true),
                new LeadLine("", "amp's foot switch", "amp, foot switch", "", "its own lead", false),
            ],
            sheet.Lines);
        Assert.Equal([new PackLine(1, "patch lead, 30 cm"), new PackLine(1, "instrument lead, 3 m"), new PackLine(2, "loop lead, 3 m")], sheet.Shopping);
    }

    [Fact]
    public void An_owned_lead_that_reaches_and_yet_has_no_room_is_named_with_its_plugs()
    {
        // 30 mm between the bodies: room for two slim plugs of 15, not for two angled ones of 22 at the least.
        var draft = A.Draft(A.Board(900)).With(A.Device("a").WithAudioJacks(), A.Device("b").WithAudioJacks()) with
        {
            Leads = [A.Lead("short") with { Name = "Short", Length = 150.Mm, FirstPlug = PlugShape.Angled, SecondPlug = PlugShape.Angled }],
        };

        var near = LeadSheet.Of(LeadPlan.Of(draft.Problem(), A.Rig().Placing("a", 330, 0).Placing("b", 200, 0)), LengthUnit.Millimetres).Lines[1];
        var apart = LeadSheet.Of(LeadPlan.Of(draft.Problem(), A.Rig().Placing("a", 344, 0).Placing("b", 200, 0)), LengthUnit.Millimetres).Lines[1];

        Assert.Equal((true, "Short, 15 cm, reaches, but there is no room for its angled plugs."), (near.Missing, near.Why));
        Assert.StartsWith("buy 10 cm with slim plugs, or make one of", near.Take, StringComparison.Ordinal);
        Assert.Equal((false, ""), (apart.Missing, apart.Why));
    }

    [Fact]
    public void What_the_lengths_rest_on_stands_beside_them_for_short_and_for_long_leads()
    {
        var draft = A.Draft() with { Options = new() { Wiring = WiringAllowances.Usual with { ToBoard = 4500.Mm } } };

        var basis = LeadSheet.Of(LeadPlan.Of(draft.Problem(), A.Rig()), LengthUnit.Millimetres).Basis;

        Assert.Contains("15 mm of bend at each end and 20 mm of slack", basis);
        Assert.Contains("a long one 4.5 m from the instrument to the board, 3 m from there to the amp", basis);
        Assert.Contains("Common practice, no source", basis);
    }

    [Theory]
    [InlineData(150, LengthUnit.Millimetres, "15 cm")]
    [InlineData(151, LengthUnit.Millimetres, "16 cm")]
    [InlineData(4500, LengthUnit.Millimetres, "4.5 m")]
    [InlineData(150, LengthUnit.Inches, "6 in")]
    [InlineData(3000, LengthUnit.Inches, "10 ft")]
    public void Lengths_are_said_as_leads_are_sold(int length, LengthUnit unit, string said) => Assert.Equal(said, LeadWords.Length(length.Mm, unit));

    [Fact]
    public void Marks_go_on_after_z() => Assert.Equal(["a", "z", "aa", "az", "ba"], new[] { 0, 25, 26, 51, 52 }.Select(LeadMarks.Of));
}
