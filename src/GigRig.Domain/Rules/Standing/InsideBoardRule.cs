using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Standing;

internal sealed class InsideBoardRule : IRule
{
    public string Id => RuleIds.InsideBoard;

    public string Sentence => "Every body stands wholly on the board.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        from thing in StandingThing.On(problem, rig)
        from edge in Edges.Beyond(thing.Body, problem.Board.Surface)
        select new Violation(Id, [thing.Id], $"{edge.By}", $"{thing.Name} sticks out {edge.By} over the {edge.Name} edge of the {problem.Board.Width} by {problem.Board.Depth} board.");
}
