using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Standing;

internal sealed class OnceEachRule : IRule
{
    public string Id => RuleIds.OnceEach;

    public string Sentence => "No thing comes along twice.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        rig.Placements.Select(placement => placement.Id).Concat(rig.OffBoard)
            .CountBy(id => id)
            .Where(pair => pair.Value > 1)
            .Select(pair => new Violation(Id, [pair.Key], $"{pair.Value - 1}", $"{problem.NameOf(pair.Key)} is in the rig {pair.Value} times; there is only one."));
}
