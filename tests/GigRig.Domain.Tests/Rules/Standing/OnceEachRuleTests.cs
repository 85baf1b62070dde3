using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class OnceEachRuleTests
{
    private static readonly RigProblem Problem = A.Draft().With(A.Device("echo") with { Name = "Echo" }).With(A.OffBoard("clip")).Problem();

    [Fact]
    public void Passes_where_each_thing_is_named_once() =>
        Judge.Passes(RuleIds.OnceEach, Problem, A.Rig().Placing("echo", 0, 0).Bringing("clip"));

    [Fact]
    public void Fails_for_a_device_placed_three_times() =>
        Judge.Fails(RuleIds.OnceEach, Problem, A.Rig().Placing("echo", 0, 0).Placing("echo", 200, 0).Placing("echo", 400, 0), "echo", "2", "Echo is in the rig 3 times; there is only one.");

    [Fact]
    public void Fails_for_an_off_board_thing_brought_twice() =>
        Judge.Fails(RuleIds.OnceEach, Problem, A.Rig().Bringing("clip", "clip"), "clip", "1", "clip is in the rig 2 times; there is only one.");
}
