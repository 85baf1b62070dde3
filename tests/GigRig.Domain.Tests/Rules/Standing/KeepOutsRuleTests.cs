using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class KeepOutsRuleTests
{
    private static readonly RigProblem Problem = A.Draft(A.Board(400, 200).KeepingOut(180, 150, 40, 50))
        .With(A.Device("echo").Sized(70, 120).WithJack(JackUse.Power, Side.Rear, 35))
        .Problem();

    [Fact]
    public void Passes_where_body_and_plug_touch_it()
    {
        Judge.Passes(RuleIds.KeepOuts, Problem, A.Rig().Placing("echo", 110, 80));
        Judge.Passes(RuleIds.KeepOuts, Problem, A.Rig().Placing("echo", 165, 17));
    }

    [Fact]
    public void Fails_for_a_body_that_reaches_into_it() =>
        Judge.Fails(RuleIds.KeepOuts, Problem, A.Rig().Placing("echo", 112, 80), "echo", "2 mm", "The body of echo reaches 2 mm into the keep-out at 180 mm, 150 mm.");

    [Fact]
    public void Fails_for_a_plug_that_does() =>
        Judge.Fails(RuleIds.KeepOuts, Problem, A.Rig().Placing("echo", 165, 18), "echo", "1 mm", "A plug of echo reaches 1 mm into the keep-out at 180 mm, 150 mm.");
}
