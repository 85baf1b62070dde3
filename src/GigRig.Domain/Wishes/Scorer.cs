using GigRig.Domain.Events;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Wishes;

/// <summary>Counts how good a rig is, from the rig alone.</summary>
public static class Scorer
{
    /// <summary>All tiers. Says nothing about whether the rules hold; that is <c>RuleBook</c>'s part.</summary>
    public static Score Score(RigProblem problem, Rig rig)
    {
        var coverage = Coverage.Of(problem, rig);
        return new(
            coverage.Needs.Where(n => n.Cover is not null && n.Need.Level == NeedLevel.Want).Sum(n => (long)n.Need.Weight)
                + coverage.Sounds.Where(s => s.Covers is not null && s.Sound.Level == NeedLevel.Want).Sum(s => (long)s.Sound.Weight),
            coverage.Needs.Sum(n => n.Cover?.Function.Rating ?? 0),
            problem.DevicesOn(rig).Count(),
            problem.MassCarried(rig),
            PatchLeads.Length(problem, rig),
            Reach.Of(problem, rig, coverage),
            Fronts.Of(problem, rig));
    }
}
