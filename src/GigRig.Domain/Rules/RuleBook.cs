using GigRig.Domain.Rigs;

namespace GigRig.Domain.Rules;

/// <summary>What <em>feasible</em> means, once, with no solver in sight. Judges the planner's answers and the musician's own moves alike.</summary>
public static class RuleBook
{
    public static IReadOnlyList<IRule> Rules { get; } = [];

    /// <summary>Every broken rule; empty for a rig that fits, is fed and does the job.</summary>
    public static ValueList<Violation> Check(RigProblem problem, Rig rig) =>
        Rules.SelectMany(rule => rule.Check(problem, rig)).ToValueList();
}
