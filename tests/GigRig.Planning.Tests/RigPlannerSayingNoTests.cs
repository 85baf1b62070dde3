using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.TestKit.Instances;

namespace GigRig.Planning.Tests;

/// <summary>No is said of what was proved, and by the solver only twice over: what is not confirmed, or not answered for want of work, is undecided.</summary>
public sealed class RigPlannerSayingNoTests
{
    /// <summary>All questions go to the solver, and each is left open that it has no work left for.</summary>
    private static readonly PlannerOptions BySolver = PlannerOptions.Default with { Explain = false, SetNodes = 0, FitNodes = 0, QuickTries = 1, RoundsBeforeGeometry = int.MaxValue };

    private static readonly RigProblemDraft Misfit = PublishedPackings.All.Single(p => p.Name == "E10N10").ToProblem();

    private static readonly RigProblemDraft Uncovered = A.Draft().With(A.Device("fuzz").Doing("drive")).Needing("delay");

    [Fact]
    public async Task A_misfit_that_the_solver_confirms_is_impossible() => Assert.IsType<PlanOutcome.Impossible>(await Ask.Planner(Misfit, BySolver));

    [Fact]
    public async Task A_misfit_that_it_has_no_work_left_to_confirm_is_undecided() =>
        Assert.IsType<PlanOutcome.Undecided>(await Ask.Planner(Misfit, BySolver with { ConfirmBudget = TimeSpan.Zero }));

    [Fact]
    public async Task A_choice_that_it_confirms_nobody_has_is_impossible() => Assert.IsType<PlanOutcome.Impossible>(await Ask.Planner(Uncovered, BySolver));

    [Fact]
    public async Task A_choice_that_it_has_no_work_left_to_confirm_is_undecided() =>
        Assert.IsType<PlanOutcome.Undecided>(await Ask.Planner(Uncovered, BySolver with { ConfirmBudget = TimeSpan.Zero }));

    [Fact]
    public async Task Out_of_work_for_the_only_set_there_is_it_is_undecided() =>
        Assert.IsType<PlanOutcome.Undecided>(await Ask.Planner(Misfit, BySolver with { FitBudget = TimeSpan.Zero }));

    /// <summary>Both ways the same little work, by our own search and by the solver, on all that is published.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(50, 0)]
    [InlineData(0, 1)]
    [InlineData(2000, 5)]
    public async Task With_little_work_a_packing_question_is_answered_rightly_or_left_open(int nodes, int milliseconds)
    {
        foreach (var packing in PublishedPackings.All)
        {
            var outcome = await Ask.Planner(packing.ToProblem(), BySolver with { FitNodes = nodes, FitBudget = TimeSpan.FromMilliseconds(milliseconds) });

            Assert.IsNotType(packing.Feasible ? typeof(PlanOutcome.Impossible) : typeof(PlanOutcome.Proposed), outcome);
        }
    }
}
