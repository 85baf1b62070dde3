using CsCheck;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Planning.Wiring;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests.Wiring;

/// <summary>The order is the one most players' guides give. Common practice, no source; there is no standard for it.</summary>
public sealed class DefaultChainTests
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
    public void It_visits_every_device_that_carries_audio_once() =>
        GenProblem.SmallDraft.Sample(draft =>
        {
            var problem = draft.Problem();

            var chain = DefaultChain.Order(problem, problem.Devices.Select(d => d.Id));

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
        return DefaultChain.Order(problem, problem.Devices.Select(d => d.Id));
    }

    private static string Front(RigProblemDraft draft) => string.Join(' ', Order(draft).Front);
}
