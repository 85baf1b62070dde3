using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wiring;

/// <summary>Common practice among players, no source but theirs: each piece of advice speaks where it should and is silent beside it.</summary>
public sealed class ChainAdviceTests
{
    private static readonly RigProblemDraft Night = A.Draft().Through(A.Amp()).With(
        A.Device("tune").Doing("tuner") with { Bypass = Bypass.Buffered },
        A.Device("fuzz").Doing("drive.fuzz") with { WantsBarePickup = true },
        A.Device("squash").Doing("compressor"),
        A.Device("drive").Doing("drive.low"),
        A.Device("shut").Doing("gate"),
        A.Device("fade").Doing("volume"),
        A.Device("echo").Doing("delay"),
        A.Device("hall").Doing("reverb"));

    [Fact]
    public void The_usual_order_of_a_plain_night_hears_nothing() => Assert.Empty(All(Night, "fuzz tune squash drive shut fade echo hall"));

    [Theory]
    [InlineData("tune fuzz", "bare-pickup: fuzz tune")]
    [InlineData("fuzz tune", "")]
    [InlineData("squash fuzz", "")]
    public void A_fuzz_that_wants_the_bare_pickup_is_behind_nothing_that_buffers(string front, string said) => Says(said, Night, front);

    [Fact]
    public void A_fuzz_that_wants_the_bare_pickup_is_neither_in_the_loop_nor_driven_by_a_preamp()
    {
        Says("bare-pickup: fuzz", Night.Through(A.Amp().Looped()), "tune", "fuzz");
        Says("bare-pickup: fuzz", Night with { Instrument = A.Instrument() with { Pickup = new(Active: true) } }, "fuzz tune");
        Says("", Night with { Instrument = A.Instrument() with { Pickup = new(Active: false) } }, "fuzz tune");
    }

    [Fact]
    public void Five_true_bypass_boxes_before_the_first_buffer_are_too_many()
    {
        Says("late-buffer: fuzz squash drive fade echo", Night, "fuzz squash drive fade echo tune");
        Says("late-buffer: fuzz squash drive fade echo", Night, "fuzz squash drive fade echo");
        Says("", Night, "fuzz squash drive echo");
        Says("", Night with { Instrument = A.Instrument() with { Pickup = new(Active: true) } }, "squash drive shut fade echo tune");
    }

    [Fact]
    public void A_keyboard_feeds_what_takes_line_level()
    {
        var keys = Night with { Instrument = A.Instrument() with { Family = InstrumentFamily.Keyboard } };

        Says("keyboard-level: echo", keys, "echo");
        Says("", keys with { Devices = [A.Device("echo") with { InputLevel = SignalLevel.Line }] }, "echo");
    }

    [Theory]
    [InlineData("drive squash", "compressor-after-drive: squash drive")]
    [InlineData("shut drive", "gate-before-noise: shut drive")]
    [InlineData("drive shut", "")]
    [InlineData("fade drive", "volume-before-drive: fade drive")]
    [InlineData("drive fade echo", "")]
    [InlineData("echo hall fade", "volume-after-echo: fade echo hall")]
    [InlineData("hall drive", "echo-before-drive: hall drive")]
    public void One_stands_on_its_usual_side_of_the_other(string front, string said) => Says(said, Night, front);

    [Fact]
    public void The_usual_order_never_goes_against_the_advice_about_order() =>
        Gen.OneOf([.. RoleCatalogue.All.Select(entry => entry.Role.Key)]).Array[0, 8].Select(Gen.Enum<InstrumentFamily>()).Sample((roles, family) =>
        {
            string[] aboutOrder = [AdviceIds.CompressorAfterDrive, AdviceIds.GateBeforeNoise, AdviceIds.VolumeBeforeDrive, AdviceIds.VolumeAfterEcho, AdviceIds.EchoBeforeDrive];
            var draft = A.Draft().With([.. roles.Select((role, i) => A.Device($"box{i}").Doing(role))]) with { Instrument = A.Instrument() with { Family = family } };
            var problem = draft.Problem();
            var rig = Rig(draft, "", "") with { Chain = ChainOrder.Order(problem, problem.Devices.Select(device => device.Id)) };

            Assert.DoesNotContain(ChainAdvice.Of(problem, rig), heard => aboutOrder.Contains(heard.Advice.Id));
        });

    [Fact]
    public void A_gate_with_a_send_and_return_of_its_own_may_stand_before_the_noise() => Says(
        "",
        Night with { Devices = [A.Device("shut").Doing("gate").WithAudioJacks().WithJack(JackUse.Send, Side.Rear, 20).WithJack(JackUse.Return, Side.Rear, 60), A.Device("drive").Doing("drive")] },
        "shut drive");

    [Fact]
    public void Where_the_amp_distorts_echoes_belong_in_its_loop()
    {
        var distorting = Night.Through(A.Amp().WithChannels("drive.high").Looped()).Needing("drive.high", "delay");

        Says("echo-before-amp-drive: echo amp", distorting, "echo");
        Says("", distorting, "", "echo");
        Assert.Contains("It has no loop", Assert.Single(All(Night.Through(A.Amp().WithChannels("drive.high")).Needing("drive.high", "delay"), "echo")).Advice.Sentence);
        Says("", Night.Through(A.Amp().WithChannels("clean")).Needing("clean", "delay"), "echo");
    }

    [Fact]
    public void Stereo_begins_with_one_lead_and_ends_at_one_input()
    {
        var wide = A.Draft().Through(A.Amp()).With(HopsTests.StereoOut("wide"), HopsTests.StereoOut("hall").WithJack(JackUse.In, Side.Right, 80), A.Device("mono"));

        Says("stereo-collapsed: hall", wide, "wide hall mono");
        Says("mono-into-stereo: hall; stereo-collapsed: hall", wide, "mono hall");
        Says("mono-into-stereo: hall", wide with { Amp = null }, "hall");
    }

    [Fact]
    public void A_line_level_send_clips_what_is_not_made_for_it()
    {
        var line = Night.Through(A.Amp().Looped() with { LoopLevel = SignalLevel.Line });

        Says("line-send: echo amp", line, "", "echo");
        Says("", line with { Devices = [A.Device("echo").Doing("delay") with { InputLevel = SignalLevel.Line }] }, "", "echo");
        Says("", Night.Through(A.Amp().Looped()), "", "echo");
    }

    [Fact]
    public void A_parallel_loop_wants_echoes_fully_wet_and_nothing_that_shapes_the_whole() =>
        Says("parallel-wet: echo hall; parallel-whole: shut", Night.Through(A.Amp().Looped(AmpLoop.Parallel)), "", "shut echo hall");

    [Fact]
    public void Four_leads_to_one_device_can_hum() => Says(
        "four-cable-hum: both",
        Night.Through(A.Amp().Looped()).With(A.Device("both").Doing("modulation").WithAudioJacks().WithJack(JackUse.Send, Side.Rear, 20).WithJack(JackUse.Return, Side.Rear, 60)),
        "both");

    [Fact]
    public void A_drive_without_amp_or_cabinet_is_fizzy()
    {
        Says("no-cabinet: drive", Night with { Amp = null }, "drive echo");
        Says("", (Night with { Amp = null }).With(A.Device("voice").Doing("direct")).Needing("direct"), "drive voice");
        Says("", Night with { Amp = null }, "echo");
    }

    [Fact]
    public void The_line_of_a_bass_is_agreed_with_the_engineer()
    {
        var bass = Night with { Amp = null, Instrument = A.Instrument() with { Family = InstrumentFamily.Bass } };

        Says("bass-line: squash", bass, "squash");
        Says("", bass, "");
    }

    [Fact]
    public void Advice_the_musician_answered_is_known_as_such_until_it_is_about_other_things()
    {
        var draft = Night;
        var silenced = Rig(draft, "echo hall fade", "") with { Silenced = [new("volume-after-echo", [new("hall"), new("fade"), new("echo")], "I want silence")] };

        Assert.Equal("I want silence", Assert.Single(ChainAdvice.Of(draft.Problem(), silenced)).Silenced?.Note);
        Assert.Null(Assert.Single(ChainAdvice.Of(draft.Problem(), silenced.Chained("echo fade hall"))).Silenced);
    }

    private static void Says(string said, RigProblemDraft draft, string front, string loop = "") =>
        Assert.Equal(said, string.Join("; ", All(draft, front, loop).Select(heard => $"{heard.Advice.Id}: {string.Join(' ', heard.Advice.Culprits)}")));

    private static ValueList<HeardAdvice> All(RigProblemDraft draft, string front, string loop = "") => ChainAdvice.Of(draft.Problem(), Rig(draft, front, loop));

    private static Rig Rig(RigProblemDraft draft, string front, string loop) =>
        (A.Rig() with { Placements = draft.Devices.Select(device => new Placement(device.Id, default)).ToValueList() }).Chained(front, loop);
}
