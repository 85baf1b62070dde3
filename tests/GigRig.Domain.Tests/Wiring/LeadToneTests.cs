using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wiring;

public sealed class LeadToneTests
{
    private static readonly Instrument Guitar = A.Instrument() with { Pickup = new(2400, 120, 500_000) };

    /// <summary>Computed here: 2.4 H, 120 pF of winding, 125 pF/m; 3 m resonate at 4618 Hz, 6 m at 3483 Hz.</summary>
    [Fact]
    public void A_known_pickup_on_a_known_lead_resonates_at_one_place()
    {
        var tone = LeadTone.Of(LeadPlan.Of(Draft(Guitar, 6000, 125).Problem(), A.Rig()))!;

        Assert.Equal([ToneWay.AsWired, ToneWay.ShortLead], tone.Cases.Select(way => way.Way));
        Assert.Equal((3483.0, 3483.0), (Math.Round(tone.Cases[0].Bright.Resonance), Math.Round(tone.Cases[0].Dark.Resonance)));
        Assert.Equal(4618, tone.Cases[1].Middle.Resonance, 0.5);
    }

    [Fact]
    public void What_is_not_known_spreads_it_and_the_middle_lies_between()
    {
        var way = LeadTone.Of(LeadPlan.Of(Draft(A.Instrument(), 6000, null).Problem(), A.Rig()))!.Cases[0];

        Assert.True(way.Dark.Resonance < way.Middle.Resonance && way.Middle.Resonance < way.Bright.Resonance);
    }

    [Fact]
    public void Boxes_of_bare_wire_pull_it_down_and_a_buffer_in_front_of_them_lets_it_up_again()
    {
        var boxes = new[] { "a", "b", "c", "d" };
        var draft = Draft(Guitar, 6000, 125).With([.. boxes.Select(id => A.Device(id).Sized(60, 100))]);
        var rig = boxes.Aggregate(A.Rig(), (rig, id) => rig.Placing(id, 400 - (100 * rig.Placements.Count), 0));

        var tone = LeadTone.Of(LeadPlan.Of(draft.Problem(), rig))!;

        Assert.Equal([ToneWay.AsWired, ToneWay.BufferFirst, ToneWay.ShortLead], tone.Cases.Select(way => way.Way));
        Assert.Equal(4, tone.Cases[0].Boxes);
        Assert.Equal(6000.Mm, tone.Cases[1].Length);
        Assert.True(tone.Cases[0].Middle.Resonance < tone.Cases[1].Middle.Resonance);
        Assert.True(tone.Cases[1].Middle.Resonance < tone.Cases[2].Middle.Resonance);
    }

    [Theory]
    [InlineData(InstrumentFamily.Guitar, true)]
    [InlineData(InstrumentFamily.Keyboard, null)]
    public void What_no_coil_drives_has_no_such_tone(InstrumentFamily family, bool? active) =>
        Assert.Null(LeadTone.Of(LeadPlan.Of(Draft(A.Instrument() with { Family = family, Pickup = new(Active: active) }, 6000, 125).Problem(), A.Rig())));

    private static RigProblemDraft Draft(Instrument instrument, int length, int? capacitance) => A.Draft().Through(A.Amp()) with
    {
        Instrument = instrument,
        Leads = [new(new("stage"), "Stage", LeadKind.Instrument, length.Mm, PlugShape.Straight, PlugShape.Straight, 2, capacitance)],
    };
}
