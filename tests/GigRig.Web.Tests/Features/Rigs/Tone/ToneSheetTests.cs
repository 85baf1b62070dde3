using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Rigs.Tone;
using Xunit;

namespace GigRig.Web.Tests.Features.Rigs.Tone;

public sealed class ToneSheetTests
{
    private static readonly RigProblemDraft Draft = A.Draft()
        .With(
            A.Device("fuzz").Sized(60, 100) with { Name = "Fuzz", WantsBarePickup = true },
            A.Device("wah").Sized(60, 100) with { Name = "Wah" },
            A.Device("echo").Sized(60, 100).Doing("delay") with { Name = "Echo", Bypass = Bypass.Buffered })
        .Through(A.Amp()) with
    {
        Instrument = A.Instrument() with { Pickup = new(2400, 120, 500_000) },
        Leads = [Stage("Stage", 6000, 125), Stage("Short stage", 3000, 125)],
    };

    private static readonly Rig Rig = A.Rig().Placing("fuzz", 400, 0).Placing("wah", 300, 0).Placing("echo", 200, 0);

    [Fact]
    public void It_tells_what_the_pickup_drives_and_where_it_ends() =>
        Assert.StartsWith("With every true-bypass box off, the pickup drives 6", Of(Draft, Rig).Story, StringComparison.Ordinal);

    [Fact]
    public void Its_numbers_are_those_of_the_circuit()
    {
        var sheet = Of(Draft, A.Rig());

        // Computed here: 120 pF and 6 m of 125 pF/m on 2.4 H resonate at 3483 Hz, 3 m at 4618 Hz, a quarter more.
        Assert.Equal(
            [new ToneRow(ToneWay.AsWired, "As wired", "6 m", "870 pF", "3.5 kHz", "25 % lower"), new ToneRow(ToneWay.ShortLead, "3 m of lead alone", "3 m", "495 pF", "4.6 kHz", "–")],
            sheet.Rows);
    }

    [Fact]
    public void It_says_which_owned_box_could_buffer_early_and_what_that_brings()
    {
        var draft = Draft.With(A.Device("tuner").Doing("tuner") with { Name = "Tuner", Bypass = Bypass.Buffered });

        Assert.Matches(
            "^Bring Tuner, which buffers, and put it where the board begins: .* kHz instead of .* kHz\\. Keep Fuzz before it",
            Of(draft, Rig).Remedies[0]);
        Assert.StartsWith("Move Tuner", Of(draft, Rig.Placing("tuner", 0, 150)).Remedies[0], StringComparison.Ordinal);
    }

    [Fact]
    public void An_echo_that_buffers_is_not_sent_to_the_front() =>
        Assert.StartsWith("Put a box that buffers where the board begins", Of(Draft, Rig).Remedies[0], StringComparison.Ordinal);

    [Fact]
    public void A_shorter_lead_that_is_owned_is_named() =>
        Assert.StartsWith("Play through Short stage (3 m)", Of(Draft, Rig).Remedies[1], StringComparison.Ordinal);

    [Theory]
    [InlineData(LengthUnit.Millimetres, "6.5 m")]
    [InlineData(LengthUnit.Inches, "21.3 ft")]
    public void Leads_are_told_in_metres_or_feet(LengthUnit unit, string shown) => Assert.Equal(shown, ToneSheet.Long(6500.Mm, unit));

    [Fact]
    public void A_short_lead_needs_no_cure() =>
        Assert.Equal(["Nothing to cure: it lies within a tenth of the short lead."], Of(Draft with { Leads = [Stage("Short", 3000, 125)], Options = PlanOptions.Default with { Wiring = WiringAllowances.Usual with { ToBoard = 3000.Mm } } }, A.Rig()).Remedies);

    [Fact]
    public void Only_what_nobody_entered_is_taken_for_granted()
    {
        Assert.Equal(["Each", "Coil"], Of(Draft, A.Rig().Placing("fuzz", 0, 0)).Assumed.Select(line => line[..4]));
        Assert.Equal(["Lead", "Each", "Coil"], Of(Draft, Rig).Assumed.Select(line => line[..4]));
        Assert.Single(Of(Draft, A.Rig()).Assumed);
        Assert.Equal(5, Of(Draft with { Instrument = null, Leads = [] }, A.Rig()).Assumed.Count);
    }

    [Fact]
    public void An_unknown_value_makes_a_range() =>
        Assert.Matches(@"^\d\.\d–\d+\.\d kHz$", Of(Draft with { Instrument = null }, A.Rig()).Rows[0].Resonance);

    [Fact]
    public void The_plot_keeps_within_its_frame()
    {
        var tone = LeadTone.Of(LeadPlan.Of(Draft.Problem(), Rig))!;

        foreach (var point in TonePlot.Path(tone.Cases[0].Middle)[1..].Split('L'))
        {
            var at = point.Split(' ').Select(number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
            Assert.InRange(at[0], TonePlot.Left - 0.01, TonePlot.Width - TonePlot.Right + 0.01);
            Assert.InRange(at[1], TonePlot.Top - 0.01, TonePlot.Height - TonePlot.Bottom + 0.01);
        }
    }

    private static ToneSheet Of(RigProblemDraft draft, Rig rig)
    {
        var problem = draft.Problem();
        return ToneSheet.Of(problem, rig, LeadTone.Of(LeadPlan.Of(problem, rig))!, LengthUnit.Millimetres);
    }

    private static Lead Stage(string name, int length, int capacitance) =>
        new(new(name), name, LeadKind.Instrument, length.Mm, PlugShape.Straight, PlugShape.Straight, 2, capacitance);
}
