using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Playing;

public sealed class SoundsPlayableRuleTests
{
    private static readonly RigProblem Problem = A.Draft().Through(A.Amp().WithChannels("clean", "drive"))
        .With(A.Device("multi").DoingOneOf("engine", "delay", "reverb"), A.Device("echo").Doing("delay"))
        .Playing("wash", "delay", "reverb").WantingSound("dream", 5, "clean", "drive").Problem();

    [Fact]
    public void Passes_where_all_roles_can_be_on_together_and_a_wanted_sound_goes_without() =>
        Judge.Passes(RuleIds.SoundsPlayable, Problem, A.Rig().Placing("multi", 0, 0).Placing("echo", 200, 0));

    [Fact]
    public void Fails_where_they_exclude_each_other() =>
        Judge.Fails(RuleIds.SoundsPlayable, Problem, A.Rig().Placing("multi", 0, 0), "", "", "wash cannot be played: Delay and Reverb cannot all be on at once.");

    [Fact]
    public void Fails_where_nothing_does_one_of_them() =>
        Judge.Fails(RuleIds.SoundsPlayable, Problem, A.Rig().Placing("echo", 0, 0), "", "", "wash cannot be played: nothing in the rig does Reverb.");
}
