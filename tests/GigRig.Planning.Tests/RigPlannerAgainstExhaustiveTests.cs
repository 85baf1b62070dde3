using CsCheck;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Planning.Tests.Opponents;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests;

/// <summary>The planner against trying everything, on random tiny problems: the same first four tiers, impossible exactly where it is.</summary>
public sealed class RigPlannerAgainstExhaustiveTests
{
    private const int Problems = 400;

    [Fact]
    public Task Of_any_kind() => GenProblem.SmallDraft.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Where_space_decides() => GenContest.Crowded.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Where_neighbours_decide() => GenContest.InARow.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Where_outlets_decide() => GenContest.Hungry.SampleAsync(MatchAsync, iter: Problems);

    private static async Task MatchAsync(RigProblemDraft draft)
    {
        var problem = draft.Problem();
        var best = new ExhaustivePlanner(problem).Best();

        var outcome = await Ask.Quietly(draft);

        if (best is not var (rig, choice))
        {
            Assert.IsType<PlanOutcome.Impossible>(outcome);
            return;
        }

        Assert.Empty(NaiveRigChecker.Faults(problem, rig));
        var proposed = Assert.IsType<PlanOutcome.Proposed>(outcome);
        var score = proposed.Best.Score;
        var expected = new NaiveScore(choice.Wants, choice.Rating, choice.Devices.Count, choice.Mass);
        Assert.Equal(expected, new NaiveScore(score.Wants, score.Rating, score.Devices, score.Mass.Value));
        Assert.Equal(expected, NaiveScore.Of(problem, proposed.Best.Rig));
        Assert.True(proposed.Proven);
        Assert.Equal(choice.Wants, proposed.Bound);
        Assert.Empty(NaiveRigChecker.Faults(problem, proposed.Best.Rig));
        Assert.Empty(RuleBook.Check(problem, proposed.Best.Rig));
    }
}
