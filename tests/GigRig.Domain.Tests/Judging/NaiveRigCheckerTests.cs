using System.Collections.Concurrent;
using CsCheck;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Generating;
using GigRig.TestKit.Judging;

namespace GigRig.Domain.Tests.Judging;

/// <summary>Two judges that share no code come to the same verdicts, and so do two counters.</summary>
public sealed class NaiveRigCheckerTests
{
    private const int Rigs = 2000;

    private static readonly Gen<(RigProblem Problem, Rig Rig)> Random =
        from problem in GenProblem.Small
        from rig in GenRig.For(problem)
        select (problem, rig);

    private static readonly Gen<(RigProblem Problem, Rig Rig)> Changed =
        from pair in Gen.Frequency((3, Random), (1, GenFeasible.Pair))
        from changed in GenMutation.Of(pair.Problem, pair.Rig)
        select (pair.Problem, changed);

    [Fact]
    public void Both_judges_find_the_same_rules_broken_and_every_rule_is_broken_by_some_rig()
    {
        var broken = new ConcurrentDictionary<string, bool>();
        Gen.Frequency((1, Random), (2, Changed)).Sample(
            (problem, rig) =>
            {
                var found = RuleBook.Check(problem, rig).Select(violation => violation.RuleId).Distinct().Order(StringComparer.Ordinal).ToList();
                Assert.Equal(NaiveRigChecker.BrokenRules(problem, rig), found);
                found.ForEach(id => broken[id] = true);
            },
            iter: 2 * Rigs);
        Assert.Equal(RuleBook.Rules.Select(rule => rule.Id).Order(), broken.Keys.Order());
    }

    [Fact]
    public void Both_judges_accept_rigs_that_are_right_by_construction() =>
        GenFeasible.Pair.Sample(
            (problem, rig) =>
            {
                Assert.Empty(NaiveRigChecker.Faults(problem, rig));
                Assert.Empty(RuleBook.Check(problem, rig));
            },
            iter: Rigs);

    [Fact]
    public void Both_count_the_same_score() =>
        Random.Sample(
            (problem, rig) =>
            {
                var score = Scorer.Score(problem, rig);
                Assert.Equal(NaiveScore.Of(problem, rig), new NaiveScore(score.Wants, score.Rating, score.Devices, score.Mass.Value));
            },
            iter: Rigs);
}
