using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Standing;

internal sealed class PlugOverhangRule : IRule
{
    public string Id => RuleIds.PlugOverhang;

    public string Sentence => "Plugs stick out over the edges of the board no further than they may.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        from thing in StandingThing.On(problem, rig)
        from edge in thing.Plugs.SelectMany(plug => Edges.Beyond(plug, problem.Board.PlugSpace)).GroupBy(edge => edge.Name, edge => edge.By)
        select new Violation(Id, [thing.Id], $"{edge.Max()}", $"A plug of {thing.Name} sticks out {edge.Max()} further over the {edge.Key} edge than the board allows.");
}
