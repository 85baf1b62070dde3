using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Standing;

internal sealed class LidRule : IRule
{
    public string Id => RuleIds.Lid;

    public string Sentence => "Everything on the board fits under its lid.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        from thing in StandingThing.On(problem, rig)
        where thing.Height > problem.Board.ClearanceOver
        let excess = thing.Height - problem.Board.ClearanceOver!.Value
        select new Violation(Id, [thing.Id], $"{excess}", $"{thing.Name} is {thing.Height} high; the lid leaves {problem.Board.ClearanceOver}.");
}
