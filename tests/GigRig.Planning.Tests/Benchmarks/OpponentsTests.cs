using CsCheck;
using GigRig.Benchmarks.Contenders;
using GigRig.Benchmarks.Opponents;
using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests.Benchmarks;

/// <summary>
/// Three models of one question that share no code: what the opponents prove is what the planner proves. What they leave out is taken out of the question first.
/// </summary>
public sealed class OpponentsTests
{
    private const int Problems = 60;

    [Fact]
    public Task Agree_on_questions_of_any_kind() => GenProblem.SmallDraft.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Agree_where_space_decides() => GenContest.Crowded.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public Task Agree_where_outlets_decide() => GenContest.Hungry.SampleAsync(MatchAsync, iter: Problems);

    [Fact]
    public void Name_what_they_leave_out()
    {
        var plain = A.Draft();

        Assert.Empty(OneModel.LeavesOut(plain.Problem()));
        Assert.Equal(
            ["splitters", "switch spacing"],
            OneModel.LeavesOut((plain with { Adapters = new(Splitter: 1), Options = plain.Options with { SwitchSpacing = 60.Mm } }).Problem()));
    }

    private static async Task MatchAsync(RigProblemDraft draft)
    {
        var known = draft with { Adapters = draft.Adapters with { Splitter = 0 }, Options = draft.Options with { SwitchSpacing = Millimetres.Zero, Fixed = [], Arrange = false } };
        var outcome = await Ask.Quietly(known);
        var problem = known.Problem();
        foreach (var opponent in new[] { Contender.Textbook, Contender.Best })
            Match(outcome, opponent.Solve(problem).Judged(problem));
    }

    private static void Match(PlanOutcome outcome, Answer answer)
    {
        Assert.Equal(outcome is PlanOutcome.Impossible ? AnswerKind.Impossible : AnswerKind.Proved, answer.Kind);
        if (outcome is not PlanOutcome.Proposed proposed)
            return;
        Assert.True(proposed.Proven);
        Assert.Empty(answer.BrokenRules);
        Assert.Equal(0, answer.Score!.Value.CompareChoice(proposed.Best.Score));
    }
}
