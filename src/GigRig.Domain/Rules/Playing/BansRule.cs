using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Playing;

internal sealed class BansRule : IRule
{
    public string Id => RuleIds.Bans;

    public string Sentence => "No banned thing comes along.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        problem.Options.Ban
            .Where(rig.Holds)
            .Select(id => new Violation(Id, [id], "", $"{problem.NameOf(id)} is banned but comes along."));
}
