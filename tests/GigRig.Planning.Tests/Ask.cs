using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests;

/// <summary>Puts a question to the planner and insists on the kind of answer.</summary>
internal static class Ask
{
    public static Task<PlanOutcome> Planner(RigProblemDraft draft, PlannerOptions? options = null) =>
        new RigPlanner().PlanAsync(draft.Problem(), options, cancel: TestContext.Current.CancellationToken);

    /// <summary>Without looking for reasons and repairs.</summary>
    public static Task<PlanOutcome> Quietly(RigProblemDraft draft) =>
        Planner(draft, PlannerOptions.Default with { Explain = false });

    /// <summary>Time enough for anything small.</summary>
    public static Clock Patiently => new(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);

    public static async Task<PlanOutcome.Proposed> Proposed(RigProblemDraft draft) =>
        Assert.IsType<PlanOutcome.Proposed>(await Planner(draft));

    /// <summary>Proposed and proved.</summary>
    public static async Task<Proposal> Best(RigProblemDraft draft)
    {
        var proposed = await Proposed(draft);
        Assert.True(proposed.Proven);
        return proposed.Best;
    }

    public static async Task<PlanOutcome.Impossible> Impossible(RigProblemDraft draft) =>
        Assert.IsType<PlanOutcome.Impossible>(await Planner(draft));
}
