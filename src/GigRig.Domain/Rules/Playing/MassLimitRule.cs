using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules.Playing;

internal sealed class MassLimitRule : IRule
{
    public string Id => RuleIds.MassLimit;

    public string Sentence => "All that is carried weighs no more than the event allows.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig)
    {
        if (problem.Event.Limits.Mass is { } most && problem.MassCarried(rig) is var mass && mass > most)
            yield return new(Id, [], $"{mass - most}", $"All that is carried weighs {mass}; {problem.Event.Name} allows {most}.");
    }
}
