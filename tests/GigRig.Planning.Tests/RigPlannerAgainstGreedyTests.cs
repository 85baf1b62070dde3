using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;
using GigRig.Planning.Tests.Opponents;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests;

/// <summary>The planner against plain greed, on problems too large to try everything.</summary>
public sealed class RigPlannerAgainstGreedyTests
{
    private const int Problems = 60;

    [Fact]
    public Task Greed_never_beats_a_proved_proposal() =>
        GenContest.Larger.SampleAsync(async draft =>
        {
            var problem = draft.Problem();
            if (new GreedyPlanner(problem).Rig() is not { } rig)
                return;
            Assert.Empty(NaiveRigChecker.Faults(problem, rig));

            var proposed = Assert.IsType<PlanOutcome.Proposed>(await Ask.Quietly(draft));

            if (proposed.Proven)
                Assert.InRange(proposed.Best.Score.CompareChoice(Scorer.Score(problem, rig)), 0, 1);
            Assert.InRange(Scorer.Score(problem, rig).Wants, 0, proposed.Bound);
            Assert.Empty(NaiveRigChecker.Faults(problem, proposed.Best.Rig));
        }, iter: Problems);

    [Fact]
    public Task What_is_made_to_be_possible_is_never_called_impossible() =>
        GenContest.Larger.SampleAsync(async draft =>
        {
            if (new GreedyPlanner(draft.Problem()).Rig() is not { } rig)
                return;

            var outcome = await Ask.Quietly(AllOf(rig, draft));

            Assert.IsNotType<PlanOutcome.Impossible>(outcome);
        }, iter: Problems);

    [Fact]
    public Task It_is_at_least_as_good_as_the_rig_the_question_was_made_for() =>
        GenFeasible.Pair.SampleAsync(async made =>
        {
            var proposed = Assert.IsType<PlanOutcome.Proposed>(await Ask.Quietly(made.Problem.Draft));

            Assert.True(proposed.Proven);
            Assert.InRange(proposed.Best.Score.CompareChoice(Scorer.Score(made.Problem, made.Rig)), 0, 1);
        }, iter: 4 * Problems);

    /// <summary>Everything in the rig pinned, everything it can do a must.</summary>
    private static RigProblemDraft AllOf(Rig rig, RigProblemDraft draft)
    {
        var coverage = Coverage.Of(draft.Problem(), rig);
        return draft with
        {
            Event = draft.Event with
            {
                Needs = coverage.Needs.Select(n => n.Cover is null ? n.Need : n.Need with { Level = NeedLevel.Must }).ToValueList(),
                Sounds = coverage.Sounds.Select(s => s.Covers is null ? s.Sound : s.Sound with { Level = NeedLevel.Must }).ToValueList(),
            },
            Options = draft.Options with { Pin = rig.Placements.Select(p => p.Id).Concat(rig.OffBoard).ToValueList() },
        };
    }
}
