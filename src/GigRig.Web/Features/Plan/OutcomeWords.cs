using System.Globalization;
using GigRig.Domain.Rigs;
using GigRig.Web.Shared;
using GigRig.Web.Sheets;

namespace GigRig.Web.Features.Plan;

/// <summary>The planner's answer in words: how sure it is.</summary>
public static class OutcomeWords
{
    /// <summary>The verdict in a few words.</summary>
    public static string TitleOf(PlanOutcome outcome) => outcome switch
    {
        PlanOutcome.Proposed { Proven: true } => "Proved best",
        PlanOutcome.Proposed => "Best so far",
        PlanOutcome.Impossible => "Proved impossible",
        _ => "Undecided",
    };

    /// <summary>What the verdict says, and what it leaves open.</summary>
    public static string SentenceOf(PlanOutcome outcome) => outcome switch
    {
        PlanOutcome.Proposed { Proven: true } =>
            "No other set of your ready gear covers more of the wants; none that covers as much is rated higher; and none of those does it with fewer boxes or less weight.",
        PlanOutcome.Proposed { Best.Score: var score } proposed when proposed.Bound > score.Wants =>
            $"It keeps every rule. The search ended before it was proved best: there could be up to {Number(proposed.Bound - score.Wants)} more in wants.",
        PlanOutcome.Proposed =>
            "It keeps every rule, and no other set covers more of the wants. Better ratings, fewer boxes or less weight were not ruled out.",
        PlanOutcome.Impossible => "No set of your ready gear meets every must. These cannot all hold together:",
        _ => "The search ended before a rig was found or proved not to exist. Plan again, or ask for less.",
    };

    private static string Number(long value) => value.ToString("N0", CultureInfo.CurrentCulture);
}
