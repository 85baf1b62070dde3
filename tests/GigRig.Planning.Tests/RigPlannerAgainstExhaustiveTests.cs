using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.Planning.Tests.Opponents;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests;

/// <summary>The planner against trying everything, on random tiny problems: the same first four tiers, impossible exactly where it is.</summary>
public sealed class RigPlannerAgainstExhaustiveTests
{
    private const int Problems = 320;

    private static readonly PlannerOptions Quiet = PlannerOptions.Default with { Explain = false };

    [Fact]
    public Task Of_any_kind() => GenProblem.SmallDraft.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Where_space_decides() => GenContest.Crowded.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Where_some_things_are_alike() => GenContest.Alike.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Where_neighbours_decide() => GenContest.InARow.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Where_outlets_decide() => GenContest.Hungry.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Around_what_is_fixed() => GenContest.AroundFixed.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Where_the_choosing_itself_places_things_from_the_start() =>
        Gen.OneOf(GenContest.Crowded, GenContest.InARow, GenContest.AroundFixed, GenProblem.SmallDraft).SampleAsync(draft => MatchAsync(draft, Quiet with { SetNodes = 0, RoundsBeforeGeometry = 0 }), iter: Problems / 2);

    [Fact]
    public Task Where_the_solver_has_the_whole_question() =>
        Gen.OneOf(GenContest.Mixed, GenContest.AroundFixed).SampleAsync(draft => MatchAsync(draft, Quiet with { SetNodes = 0, FitNodes = 0 }), iter: Problems / 2);

    [Fact]
    public Task Where_our_own_search_gives_up_half_way() =>
        Gen.OneOf(GenContest.Mixed, GenContest.AroundFixed).SampleAsync(draft => MatchAsync(draft, Quiet with { SetNodes = 24 }), iter: Problems / 2);

    /// <summary>What was left open is asked again with more work for each question, as long as there is time.</summary>
    [Fact]
    public Task With_little_work_for_a_single_question_of_power() =>
        GenContest.Hungry.SampleAsync(draft => MatchAsync(draft, Quiet with { PowerStates = 20 }), iter: Problems / 2);

    /// <summary>Every question of fit that the quick placer does not answer is left open.</summary>
    [Fact]
    public Task Without_time_to_prove_a_misfit_it_claims_nothing_that_is_not_so() =>
        Gen.OneOf(GenContest.Crowded, GenContest.InARow).SampleAsync(async draft =>
        {
            var problem = draft.Problem();
            var best = new ExhaustivePlanner(problem).BestFirst().Select(rig => rig.Choice).FirstOrDefault();

            var outcome = await Ask.Planner(draft, Quiet with { FitNodes = 0, FitBudget = TimeSpan.Zero, ShrinkBudget = TimeSpan.Zero, QuickTries = 1 });

            if (best is null)
            {
                Assert.IsNotType<PlanOutcome.Proposed>(outcome);
                return;
            }

            Assert.IsNotType<PlanOutcome.Impossible>(outcome);
            if (outcome is PlanOutcome.Undecided undecided)
                Assert.InRange(best.Wants, 0, undecided.Bound);
            if (outcome is PlanOutcome.Proposed proposed)
            {
                Assert.InRange(best.Wants, proposed.Best.Score.Wants, proposed.Bound);
                Assert.True(!proposed.Proven || FourTiers(proposed.Best) == best.Score);
                Assert.Empty(NaiveRigChecker.Faults(problem, proposed.Best.Rig));
            }
        }, iter: Problems / 2);

    [Fact]
    public Task Its_alternatives_are_the_next_best_sets_each_without_something_of_all_before() =>
        Gen.OneOf(GenContest.Mixed, GenContest.Alike, GenContest.AroundFixed).SampleAsync(draft => AlternativesAsync(draft, Quiet), iter: Problems / 4);

    [Fact]
    public Task So_they_are_where_the_solver_has_the_whole_question() =>
        GenContest.Crowded.SampleAsync(draft => AlternativesAsync(draft, Quiet with { SetNodes = 0 }), iter: Problems / 12);

    private static NaiveScore FourTiers(Proposal proposal) => new(proposal.Score.Wants, proposal.Score.Rating, proposal.Score.Devices, proposal.Score.Mass.Value);

    private static Task MatchAsync(RigProblemDraft draft) => MatchAsync(draft, Quiet);

    private static async Task MatchAsync(RigProblemDraft draft, PlannerOptions options)
    {
        var problem = draft.Problem();
        var best = new ExhaustivePlanner(problem).BestFirst().Take(1).ToList();

        var outcome = await Ask.Planner(draft, options);

        if (best is not [var (rig, choice)])
        {
            Assert.IsType<PlanOutcome.Impossible>(outcome);
            return;
        }

        Assert.Empty(NaiveRigChecker.Faults(problem, rig));
        var proposed = Assert.IsType<PlanOutcome.Proposed>(outcome);
        Assert.Equal(choice.Score, FourTiers(proposed.Best));
        Assert.Equal(choice.Score, NaiveScore.Of(problem, proposed.Best.Rig));
        Assert.True(proposed.Proven);
        Assert.Equal(choice.Wants, proposed.Bound);
        Assert.Empty(NaiveRigChecker.Faults(problem, proposed.Best.Rig));
        Assert.Empty(RuleBook.Check(problem, proposed.Best.Rig));
    }

    private static async Task AlternativesAsync(RigProblemDraft any, PlannerOptions options)
    {
        // Something that weighs nothing and is of no use makes a set that is as good as that without it.
        var draft = any with
        {
            Devices = any.Devices.Select(d => d with { Mass = d.Mass + 1.G }).ToValueList(),
            OffBoard = any.OffBoard.Select(i => i with { Mass = i.Mass + 1.G }).ToValueList(),
        };
        var problem = draft.Problem();
        var best = new List<OneChoice>();
        foreach (var (_, next) in new ExhaustivePlanner(problem).BestFirst())
        {
            if (best.Count < 4 && !best.Exists(before => before.Things.IsSubsetOf(next.Things)))
                best.Add(next);
        }

        if (await Ask.Planner(draft with { Options = draft.Options with { Alternatives = 3 } }, options) is not PlanOutcome.Proposed proposed)
            return;

        Assert.Equal(best.Select(choice => choice.Score), proposed.Alternatives.Prepend(proposed.Best).Select(FourTiers));
        Assert.All(proposed.Alternatives, alternative => Assert.Empty(NaiveRigChecker.Faults(problem, alternative.Rig)));
        Assert.Distinct(proposed.Alternatives.Prepend(proposed.Best).Select(p => string.Join(' ', p.Rig.Placements.Select(x => x.Id).Concat(p.Rig.OffBoard).Order())));
    }
}
