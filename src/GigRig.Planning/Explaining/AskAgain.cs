using GigRig.Domain.Rigs;

namespace GigRig.Planning.Explaining;

/// <summary>Plans a changed problem within what is left of the time, without explaining in turn.</summary>
/// <param name="each">At most so long for one question.</param>
internal sealed class AskAgain(PlannerOptions options, Clock clock, TimeSpan each)
{
    public bool IsImpossible(RigProblemDraft draft) => Plan(draft, firstWillDo: true) is PlanOutcome.Impossible;

    /// <summary>The best rig of the changed problem, proved or not; null where there is none or it was not found in time.</summary>
    public Proposal? Best(RigProblemDraft draft) => Plan(draft, firstWillDo: false) is PlanOutcome.Proposed proposed ? proposed.Best : null;

    private PlanOutcome? Plan(RigProblemDraft draft, bool firstWillDo)
    {
        if (clock.IsUp)
            return null;
        var quiet = draft with { Options = draft.Options with { Arrange = false, Alternatives = 0 } };
        return RigProblem.Create(quiet) is ProblemCheck.Accepted accepted
            ? RigPlanner.Plan(accepted.Problem, options with { Explain = false, FirstWillDo = firstWillDo }, null, clock.Within(each))
            : null;
    }
}
