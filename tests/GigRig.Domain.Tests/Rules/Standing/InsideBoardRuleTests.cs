using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class InsideBoardRuleTests
{
    private static readonly RigProblem Problem = A.Draft(A.Board(400, 150)).With(A.Device("echo").Sized(70, 120).Turning(Turn.None, Turn.Quarter)).Problem();

    [Theory]
    [InlineData(0, 0)]
    [InlineData(330, 30)]
    public void Passes_flush_with_the_edges(int x, int y) =>
        Judge.Passes(RuleIds.InsideBoard, Problem, A.Rig().Placing("echo", x, y));

    [Theory]
    [InlineData(331, 0, "1 mm", "echo sticks out 1 mm over the right edge of the 400 mm by 150 mm board.")]
    [InlineData(0, 44, "14 mm", "echo sticks out 14 mm over the rear edge of the 400 mm by 150 mm board.")]
    [InlineData(-2, 0, "2 mm", "echo sticks out 2 mm over the left edge of the 400 mm by 150 mm board.")]
    [InlineData(0, -3, "3 mm", "echo sticks out 3 mm over the front edge of the 400 mm by 150 mm board.")]
    public void Fails_over_any_edge(int x, int y, string amount, string sentence) =>
        Judge.Fails(RuleIds.InsideBoard, Problem, A.Rig().Placing("echo", x, y), "echo", amount, sentence);

    [Fact]
    public void The_turned_body_counts() =>
        Judge.Fails(RuleIds.InsideBoard, Problem, A.Rig().Placing("echo", 281, 0, Turn.Quarter));
}
