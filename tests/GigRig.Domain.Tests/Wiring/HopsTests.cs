using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wiring;

/// <summary>The loop: amp send to the first device's input, last device's output to amp return. Common practice; one guide in circulation has it the wrong way round.</summary>
public sealed class HopsTests
{
    [Fact]
    public void In_front_of_an_amp_each_output_leads_to_the_next_input() => Assert.Equal(
        ["Instrument instrument.Out > fuzz.In", "Patch fuzz.Out > echo.In", "ToAmp echo.Out > amp.In"],
        Of(Two().Through(A.Amp()), "fuzz echo"));

    [Fact]
    public void A_loop_runs_from_send_to_return() => Assert.Equal(
        ["Instrument instrument.Out > fuzz.In", "ToAmp fuzz.Out > amp.In", "Loop amp.Send > echo.In", "Loop echo.Out > amp.Return"],
        Of(Two().Through(A.Amp().Looped()), "fuzz", "echo"));

    [Fact]
    public void Without_an_amp_the_last_leads_to_a_box_for_the_desk() => Assert.Equal(
        ["Instrument instrument.Out > fuzz.In", "Patch fuzz.Out > echo.In", "ToAmp echo.Out > desk.In"],
        Of(Two(), "fuzz echo"));

    [Fact]
    public void What_does_the_desk_itself_takes_the_desks_line() => Assert.Equal(
        ["Instrument instrument.Out > voice.In", "DeskLine voice.Out > desk.In", "DeskLine voice.Out2 > desk.In2"],
        Of(A.Draft().With(StereoOut("voice").Doing("direct")).Needing("direct"), "voice"));

    [Fact]
    public void Beside_an_amp_its_second_output_feeds_the_desk() => Assert.Equal(
        ["Instrument instrument.Out > voice.In", "ToAmp voice.Out > amp.In", "DeskLine voice.Out2 > desk.In"],
        Of(A.Draft().Through(A.Amp()).With(StereoOut("voice").Doing("direct")).Needing("direct"), "voice"));

    [Fact]
    public void An_amp_that_goes_into_the_desk_gets_a_line_and_one_with_a_foot_switch_a_lead_for_it() => Assert.Equal(
        ["Instrument instrument.Out > amp.In", "DeskLine amp.Out > desk.In", "Footswitch footswitch.Control > amp.Control"],
        Of(A.Draft().Through(A.Amp().WithChannels("direct") with { Footswitch = true }).Needing("direct"), ""));

    [Fact]
    public void Two_stereo_neighbours_are_joined_by_two_leads_and_a_mono_one_by_one() => Assert.Equal(
        ["Instrument instrument.Out > wide.In", "Patch wide.Out > hall.In", "Patch wide.Out2 > hall.In2", "Patch hall.Out > mono.In", "ToAmp mono.Out > amp.In"],
        Of(A.Draft().Through(A.Amp()).With(StereoOut("wide"), StereoOut("hall").WithJack(JackUse.In, Side.Right, 80), A.Device("mono")), "wide hall mono"));

    [Fact]
    public void A_keyboard_plays_in_stereo_where_it_can() => Assert.Equal(
        ["Instrument guitar.Out > hall.In", "Instrument guitar.Out2 > hall.In2", "ToAmp hall.Out > amp.In"],
        Of(A.Draft().Through(A.Amp()).With(StereoOut("hall").WithJack(JackUse.In, Side.Right, 80)) with { Instrument = A.Instrument() with { Family = InstrumentFamily.Keyboard } }, "hall"));

    [Fact]
    public void A_device_that_straddles_the_loop_is_hooked_up_with_four_leads() => Assert.Equal(
        [
            "Instrument instrument.Out > fuzz.In", "Patch fuzz.Out > both.In", "Patch both.Send > push.In", "ToAmp push.Out > amp.In",
            "Loop amp.Send > both.Return", "Patch both.Out > echo.In", "Loop echo.Out > amp.Return",
        ],
        Of(Straddling(), "fuzz both push", "echo"));

    [Fact]
    public void With_everything_in_front_its_send_and_return_stay_empty() => Assert.Equal(
        ["Instrument instrument.Out > both.In", "ToAmp both.Out > amp.In"],
        Of(Straddling() with { Event = A.Event() with { Chain = ChainPolicy.AllInFront } }, "both"));

    [Fact]
    public void In_the_loop_it_is_a_device_like_any_other() => Assert.Equal(
        ["Instrument instrument.Out > amp.In", "Loop amp.Send > both.In", "Loop both.Out > amp.Return"],
        Of(Straddling(), "", "both"));

    [Fact]
    public void A_loop_that_the_amp_does_not_have_is_part_of_the_front() => Assert.Equal(
        ["Instrument instrument.Out > fuzz.In", "Patch fuzz.Out > echo.In", "ToAmp echo.Out > amp.In"],
        Of(Two().Through(A.Amp()), "fuzz", "echo"));

    internal static Device StereoOut(string id) => A.Device(id).WithAudioJacks().WithJack(JackUse.Out, Side.Left, 80);

    private static RigProblemDraft Two() => A.Draft().With(A.Device("fuzz").WithAudioJacks(), A.Device("echo"));

    private static RigProblemDraft Straddling() => Two().Through(A.Amp().Looped())
        .With(A.Device("push"), A.Device("both").WithAudioJacks().WithJack(JackUse.Send, Side.Rear, 20).WithJack(JackUse.Return, Side.Rear, 60));

    private static IEnumerable<string> Of(RigProblemDraft draft, string front, string loop = "")
    {
        var rig = A.Rig() with { Placements = draft.Devices.Select(device => new Placement(device.Id, default)).ToValueList() };
        return Hops.Of(draft.Problem(), rig.Chained(front, loop)).Select(hop => $"{hop.Kind} {Name(hop.From)} > {Name(hop.To)}");
    }

    private static string Name(HopEnd end) =>
        $"{end.Id?.Value ?? end.Thing.ToString().ToLowerInvariant()}.{end.Jack}{(end.Number == 0 ? "" : "2")}";
}
