using CsCheck;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Domain.Tests.Wiring;

/// <summary>The order is the one most players' guides give. Common practice, no source; there is no standard for it.</summary>
public sealed class ChainOrderTests
{
    [Theory]
    [InlineData("tuner", "drive.fuzz", "it hears the bare pickup, and mutes all behind it")]
    [InlineData("drive.fuzz", "filter", "a fuzz wants the bare pickup")]
    [InlineData("filter", "pitch", "")]
    [InlineData("pitch", "compressor", "it tracks the untouched note")]
    [InlineData("compressor", "drive.low", "it would raise the noise of a drive before it")]
    [InlineData("drive.low", "drive.high", "low gain before high gain")]
    [InlineData("drive.high", "equaliser", "")]
    [InlineData("equaliser", "boost", "")]
    [InlineData("boost", "gate", "")]
    [InlineData("gate", "modulation.chorus", "it shuts off the noise of the drives, not the tails")]
    [InlineData("modulation", "volume", "")]
    [InlineData("volume", "delay", "echoes ring on when it is closed")]
    [InlineData("delay", "reverb", "echoes in a room, not rooms in an echo")]
    [InlineData("reverb", "looper", "it records all before it")]
    [InlineData("looper", "direct", "")]
    public void One_comes_before_the_other(string first, string second, string why)
    {
        var draft = A.Draft().With(A.Device("b").Doing(second), A.Device("a").Doing(first)).Wanting(first).Wanting(second);

        Assert.True(Order(draft).Front is [{ Value: "a" }, { Value: "b" }], $"{first} before {second}: {why}");
    }

    [Fact]
    public void A_role_of_the_owners_own_goes_between_gate_and_modulation()
    {
        var draft = A.Draft().With(A.Device("swirl").Doing("modulation"), A.Device("bird").Doing("bird-song"), A.Device("hush").Doing("gate"));

        Assert.Equal("hush bird swirl", Front(draft));
    }

    [Fact]
    public void Alike_things_stay_in_the_order_in_which_they_were_given() =>
        Assert.Equal("a c b", Front(A.Draft().With(A.Device("a").Doing("delay"), A.Device("c").Doing("delay"), A.Device("b").Doing("delay"))));

    [Fact]
    public void A_box_of_many_uses_goes_where_it_is_used()
    {
        var draft = A.Draft().With(A.Device("multi").Doing("tuner", "delay"), A.Device("fuzz").Doing("drive")).Wanting("drive");

        Assert.Equal("multi fuzz", Front(draft.Wanting("tuner")));
        Assert.Equal("fuzz multi", Front(draft.Wanting("delay")));
    }

    [Fact]
    public void A_box_used_only_in_a_sound_goes_by_its_part_in_it() =>
        Assert.Equal("fuzz multi", Front(A.Draft().With(A.Device("multi").Doing("tuner", "delay"), A.Device("fuzz").Doing("drive")).Playing("solo", "drive", "delay")));

    [Fact]
    public void What_carries_no_audio_is_left_out() =>
        Assert.Equal("echo bare", Front(A.Draft().With(
            A.Device("echo").Doing("delay").WithAudioJacks(),
            A.Device("bare").Doing("delay"),
            A.Device("switcher").Doing("delay").WithJack(JackUse.Control, Side.Rear, 10).WithJack(JackUse.Power, Side.Rear, 50))));

    [Theory]
    [InlineData(ChainPolicy.Auto, "drive", "push", "echo hall")]
    [InlineData(ChainPolicy.Auto, "clean", "push echo hall", "")]
    [InlineData(ChainPolicy.TimeInLoop, "clean", "push", "echo hall")]
    [InlineData(ChainPolicy.AllInFront, "drive", "push echo hall", "")]
    public void Time_effects_go_into_the_loop_where_the_amp_distorts_or_it_is_asked(ChainPolicy policy, string channel, string front, string loop)
    {
        foreach (var kind in new[] { AmpLoop.Series, AmpLoop.Parallel })
        {
            var chain = Order(Night(policy, A.Amp().WithChannels(channel).Looped(kind), channel));

            Assert.Equal((front, loop), (string.Join(' ', chain.Front), string.Join(' ', chain.Loop)));
        }
    }

    [Theory]
    [InlineData(ChainPolicy.Auto)]
    [InlineData(ChainPolicy.TimeInLoop)]
    public void Without_a_loop_all_goes_in_front(ChainPolicy policy)
    {
        Assert.Empty(Order(Night(policy, A.Amp().WithChannels("drive"), "drive")).Loop);
        Assert.Empty(Order(Night(policy, null, "clean")).Loop);
    }

    [Fact]
    public void A_drive_heard_only_in_a_sound_counts_as_distortion_of_the_amp()
    {
        var draft = A.Draft().Through(A.Amp().WithChannels("drive").Looped()).With(A.Device("echo").Doing("delay")).Playing("lead", "drive", "delay");

        Assert.Equal("echo", Assert.Single(Order(draft).Loop).Value);
    }

    [Fact]
    public void A_drive_of_the_amp_that_a_better_box_does_instead_sends_nothing_into_the_loop()
    {
        var draft = A.Draft().Through(A.Amp().WithChannels("drive").Looped()).With(A.Device("fuzz").Rated("drive", 5), A.Device("echo").Doing("delay")).Wanting("drive").Wanting("delay");

        Assert.Empty(Order(draft).Loop);
    }

    [Fact]
    public void On_a_bass_the_compressor_comes_right_behind_the_tuner()
    {
        var draft = A.Draft().With(A.Device("fuzz").Doing("drive.fuzz"), A.Device("squash").Doing("compressor"), A.Device("tune").Doing("tuner"));

        Assert.Equal("tune fuzz squash", Front(draft));
        Assert.Equal("tune squash fuzz", Front(draft with { Instrument = A.Instrument() with { Family = InstrumentFamily.Bass } }));
    }

    [Fact]
    public void An_echo_with_a_send_and_return_of_its_own_stays_in_front_where_it_reaches_the_loop_all_the_same()
    {
        var draft = A.Draft().Through(A.Amp().WithChannels("drive").Looped()).Wanting("drive").Wanting("delay")
            .With(A.Device("both").Doing("delay").WithAudioJacks().WithJack(JackUse.Send, Side.Rear, 20).WithJack(JackUse.Return, Side.Rear, 60));

        Assert.Equal("both", Front(draft));
    }

    [Fact]
    public void Every_built_in_role_has_a_reason_and_a_role_of_the_owners_own_has_one_too()
    {
        foreach (var entry in RoleCatalogue.All)
        {
            var problem = A.Draft().With(A.Device("box").Doing(entry.Role.Key), A.Device("own").Doing("bird-song")).Problem();

            var reasons = ChainOrder.Reasons(problem, A.Rig().Chained("box own"));

            Assert.Equal(["box", "own"], reasons.Select(place => place.Device.Value));
            Assert.All(reasons, place => Assert.EndsWith(".", place.Reason));
            Assert.StartsWith("A role of your own", reasons[1].Reason);
        }
    }

    [Fact]
    public void The_reason_says_what_makes_the_place_special()
    {
        var draft = A.Draft().Through(A.Amp().Looped()).With(
            A.Device("fuzz").Doing("drive.fuzz") with { WantsBarePickup = true }, A.Device("squash").Doing("compressor"), A.Device("echo").Doing("delay"));
        var bass = draft with { Instrument = A.Instrument() with { Family = InstrumentFamily.Bass } };

        Assert.Equal(
            ["Fuzz right behind the pickup: it wants nothing that buffers before it.", "Compressor before the drives: it steadies what feeds them. After them it would lift their noise.", "In the loop, behind the amp's own distortion: echoes and recordings stay clean copies of it."],
            ChainOrder.Reasons(draft.Problem(), A.Rig().Chained("fuzz squash", "echo")).Select(place => place.Reason));
        Assert.Equal("Compressor early on a bass: it steadies every note and often stays on.", ChainOrder.Reasons(bass.Problem(), A.Rig().Chained("squash"))[0].Reason);
    }

    [Fact]
    public void It_visits_every_device_that_carries_audio_once() =>
        GenProblem.SmallDraft.Sample(draft =>
        {
            var problem = draft.Problem();

            var chain = ChainOrder.Order(problem, problem.Devices.Select(d => d.Id));

            return chain.Front.Concat(chain.Loop).Order().SequenceEqual(problem.Devices.Where(d => d.CarriesAudio).Select(d => d.Id).Order());
        }, iter: 1000);

    private static RigProblemDraft Night(ChainPolicy policy, Amp? amp, string channel)
    {
        var draft = A.Draft().With(A.Device("hall").Doing("reverb"), A.Device("echo").Doing("delay"), A.Device("push").Doing("boost")).Wanting(channel).Wanting("delay").Wanting("reverb");
        return draft with { Amp = amp, Event = draft.Event with { Chain = policy } };
    }

    private static Chain Order(RigProblemDraft draft)
    {
        var problem = draft.Problem();
        return ChainOrder.Order(problem, problem.Devices.Select(d => d.Id));
    }

    private static string Front(RigProblemDraft draft) => string.Join(' ', Order(draft).Front);
}
