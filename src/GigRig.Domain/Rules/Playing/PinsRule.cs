using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Playing;

internal sealed class PinsRule : IRule
{
    public string Id => RuleIds.Pins;

    public string Sentence => "Every pinned thing comes along.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        problem.Options.Pin
            .Where(id => !rig.Holds(id) && id != problem.Amp?.Id)
            .Select(id => new Violation(Id, [id], "", $"{problem.NameOf(id)} is pinned but does not come along."));
}
