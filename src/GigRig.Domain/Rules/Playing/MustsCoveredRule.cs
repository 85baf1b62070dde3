using GigRig.Domain.Events;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Domain.Rules.Playing;

internal sealed class MustsCoveredRule : IRule
{
    public string Id => RuleIds.MustsCovered;

    public string Sentence => "Every role that must be there is done by something in the rig.";

    public IEnumerable<Violation> Check(RigProblem problem, Rig rig) =>
        Coverage.Of(problem, rig).Needs
            .Where(need => need.Need.Level == NeedLevel.Must && need.Cover is null)
            .Select(need => new Violation(Id, [], "", $"Nothing in the rig does {problem.TitleOf(need.Need.Role)}, which {problem.Event.Name} must have."));
}
