using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Playing;

public sealed class AudioChainRuleTests
{
    private static readonly RigProblem Problem = A.Draft().Through(A.Amp().Looped())
        .With(A.Device("drive").WithAudioJacks(), A.Device("echo"), A.Device("rocker").WithJack(JackUse.Control, Side.Rear, 50))
        .Problem();

    private static readonly Rig Placed = A.Rig().Placing("drive", 0, 0).Placing("echo", 200, 0).Placing("rocker", 400, 0);

    [Theory]
    [InlineData("drive echo", "")]
    [InlineData("drive", "echo")]
    [InlineData("", "echo drive")]
    public void Passes_in_any_order_over_both_parts(string front, string loop) => Judge.Passes(RuleIds.AudioChain, Problem, Placed.Chained(front, loop));

    [Fact]
    public void Fails_for_a_device_that_is_not_visited() =>
        Judge.Fails(RuleIds.AudioChain, Problem, Placed.Chained("drive"), "echo", "", "echo is on the board but not in the chain.");

    [Fact]
    public void Fails_for_a_device_visited_twice() =>
        Judge.Fails(RuleIds.AudioChain, Problem, Placed.Chained("drive echo", "echo"), "echo", "1", "echo is in the chain 2 times.");

    [Fact]
    public void Fails_for_a_device_without_audio() =>
        Judge.Fails(RuleIds.AudioChain, Problem, Placed.Chained("drive echo rocker"), "rocker", "", "rocker is in the chain but has no audio input or output.");

    [Fact]
    public void Fails_for_a_device_left_at_home() =>
        Judge.Fails(RuleIds.AudioChain, Problem, A.Rig().Placing("drive", 0, 0).Chained("drive echo"), "echo", "", "echo is in the chain but not on the board.");

    [Fact]
    public void Fails_for_a_loop_that_the_amp_does_not_have()
    {
        var amp = A.Draft().Through(A.Amp()).With(A.Device("echo")).Problem();
        Judge.Fails(RuleIds.AudioChain, amp, A.Rig().Placing("echo", 0, 0).Chained("", "echo"), "echo", "", "echo should go into a loop, but amp has none.");
        var none = A.Draft().With(A.Device("echo")).Problem();
        Judge.Fails(RuleIds.AudioChain, none, A.Rig().Placing("echo", 0, 0).Chained("", "echo"), "echo", "", "echo should go into a loop, but there is no amp.");
    }
}
