using GigRig.Benchmarks.Contenders;
using GigRig.Benchmarks.Measuring;
using GigRig.Benchmarks.Problems;
using GigRig.Benchmarks.Reporting;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Benchmarks;

public sealed class ComparedRowTests
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(20);

    [Fact]
    public void A_ratio_is_how_many_times_longer_the_opponent_took()
    {
        var row = Row(Run("ours", AnswerKind.Proved, wants: 3, milliseconds: 50), Run("best", AnswerKind.Proved, wants: 3, milliseconds: 400));

        Assert.Equal(8, row.WallRatio(row.Runs[1]), precision: 6);
    }

    [Fact]
    public void What_was_not_closed_counts_as_the_whole_limit()
    {
        var row = Row(Run("ours", AnswerKind.Impossible, wants: null, milliseconds: 100), Run("best", AnswerKind.Open, wants: null, milliseconds: 20_700));

        Assert.Equal(200, row.WallRatio(row.Runs[1]), precision: 6);
    }

    [Fact]
    public void Agreement_is_no_fault() =>
        Assert.Empty(Row(Run("ours", AnswerKind.Proved, wants: 3), Run("best", AnswerKind.Open, wants: 2)).Faults());

    [Fact]
    public void A_proof_that_another_answer_beats_is_a_fault() =>
        Assert.Equal(["best beats what ours proved best"], Row(Run("ours", AnswerKind.Proved, wants: 3), Run("best", AnswerKind.Open, wants: 4)).Faults());

    [Fact]
    public void Saying_impossible_where_another_has_a_rig_is_a_fault() =>
        Assert.Equal(["ours says impossible, best has a rig"], Row(Run("ours", AnswerKind.Impossible, wants: null), Run("best", AnswerKind.Proved, wants: 0)).Faults());

    [Fact]
    public void A_broken_rule_is_a_fault_and_refutes_nobody()
    {
        var breaking = new ComparedRun("best", new(new(AnswerKind.Proved, Score: ScoreOf(9), BrokenRules: ["rails"]), Limit, Limit, 0));

        Assert.Equal(["best breaks rails"], Row(Run("ours", AnswerKind.Proved, wants: 3), breaking).Faults());
    }

    [Fact]
    public void Ninety_five_per_cent_of_twenty_values_is_the_second_largest() =>
        Assert.Equal(19, Statistics.Share(Enumerable.Range(1, 20).Select(i => (double)i), 0.95));

    [Fact]
    public void The_geometric_mean_of_2_and_8_is_4() => Assert.Equal(4, Statistics.GeometricMean([2, 8]), precision: 9);

    private static ComparedRow Row(params ComparedRun[] runs) => new(new NamedProblem("a problem", A.Draft().Problem()), Limit, runs);

    private static ComparedRun Run(string name, AnswerKind kind, long? wants, double milliseconds = 10)
    {
        var time = TimeSpan.FromMilliseconds(milliseconds);
        return new(name, new Measured<Answer>(new(kind, Score: wants is { } some ? ScoreOf(some) : null), time, time, PeakBytes: 0));
    }

    private static Score ScoreOf(long wants) => new(wants, 0, 0, Grams.Zero, Millimetres.Zero);
}
