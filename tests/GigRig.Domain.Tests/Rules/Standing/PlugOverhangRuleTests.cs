using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class PlugOverhangRuleTests
{
    private static readonly RigProblem Problem = A.Draft(A.Board(400, 200).Overhanging(front: 0, rear: 10, left: 15, right: 15))
        .With(A.Device("echo").WithAudioJacks().WithJack(JackUse.Power, Side.Rear, 50), A.Device("odd").WithJack(JackUse.Control, Side.Front, 50))
        .Problem();

    [Fact]
    public void Passes_as_far_as_the_board_allows() =>
        Judge.Passes(RuleIds.PlugOverhang, Problem, A.Rig().Placing("echo", 0, 97));

    [Fact]
    public void Fails_a_millimetre_further() =>
        Judge.Fails(RuleIds.PlugOverhang, Problem, A.Rig().Placing("echo", 0, 98), "echo", "1 mm", "A plug of echo sticks out 1 mm further over the rear edge than the board allows.");

    [Fact]
    public void Nothing_sticks_out_at_the_front_where_feet_come()
    {
        Judge.Passes(RuleIds.PlugOverhang, Problem, A.Rig().Placing("odd", 0, 15));
        Judge.Fails(RuleIds.PlugOverhang, Problem, A.Rig().Placing("odd", 0, 0), "odd", "15 mm", "A plug of odd sticks out 15 mm further over the front edge than the board allows.");
    }

    [Fact]
    public void The_usual_board_allows_forty_at_rear_left_and_right_and_none_at_the_front()
    {
        var plugs = new PlugSizes(new(41.Mm, 10.Mm), new(40.Mm, 10.Mm));
        var draft = A.Draft(A.Board(100, 100)).With(A.Device("echo").WithAudioJacks().WithJack(JackUse.Power, Side.Rear, 50));
        var problem = (draft with { Options = draft.Options with { Plugs = plugs } }).Problem();

        Assert.Equal(
            [
                "A plug of echo sticks out 1 mm further over the left edge than the board allows.",
                "A plug of echo sticks out 1 mm further over the right edge than the board allows.",
            ],
            Judge.Ask(RuleIds.PlugOverhang, problem, A.Rig().Placing("echo", 0, 0)).Select(violation => violation.Sentence.ToString()).Order());
    }
}
