using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Standing;

internal sealed class KeepOutsRule : IRule
{
    public string Id => RuleIds.KeepOuts;

    public string Sentence => "Neither body nor plug reaches into a keep-out of the board.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        from thing in StandingThing.On(problem, rig)
        from keepOut in problem.Board.KeepOuts
        let parts = thing.Parts.Where(part => part.Overlaps(keepOut)).ToList()
        where parts.Count > 0
        let reach = parts.Max(part => Clash.Depth(part, keepOut))
        select new Violation(
            Id,
            [thing.Id],
            $"{reach}",
            $"{(thing.Body.Overlaps(keepOut) ? "The body" : "A plug")} of {thing.Name} reaches {reach} into the keep-out at {keepOut.X}, {keepOut.Y}.");
}
