using CsCheck;
using GigRig.Domain.Rigs;
using GigRig.Planning.Choosing;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;
using GigRig.TestKit.Instances;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests;

public sealed class FirstRigTests
{
    public static TheoryData<string> Knapsacks { get; } = new(PublishedKnapsacks.Oriented.Select(k => k.Name));

    /// <summary>Turned or not: what the choosing finds hard is no harder to begin.</summary>
    [Theory]
    [MemberData(nameof(Knapsacks))]
    public void Every_published_knapsack_has_one_worth_most_of_the_optimum(string name)
    {
        var knapsack = PublishedKnapsacks.Oriented.Single(k => k.Name == name);
        foreach (var asked in new[] { knapsack, knapsack with { Turning = true } })
        {
            var rigs = Found(asked.ToProblem().Problem());

            Assert.InRange(rigs.Max(rig => rig!.Score.Wants), 7 * knapsack.Optimum / 10, int.MaxValue);
        }
    }

    [Fact]
    public void What_it_places_and_feeds_breaks_no_rule_but_perhaps_a_must() =>
        Gen.OneOf(GenContest.Mixed, GenContest.AroundFixed, GenContest.Larger).Sample(draft =>
        {
            var problem = draft.Problem();
            if (Faults.Of(problem).Count > 0)
                return;
            var question = new Question(problem);
            foreach (var (choice, standings, feeds) in new FirstRig(question, PlannerOptions.Default, Ask.Patiently).Find())
            {
                var broken = NaiveRigChecker.BrokenRules(problem, new RigBuilder(question, PlannerOptions.Default, Ask.Patiently).RigOf(choice, standings, feeds));
                Assert.Subset(new HashSet<string> { "musts-covered", "sounds-playable", "free-area", "board-load", "mass-limit" }, broken.ToHashSet());
            }
        }, iter: 300);

    [Fact]
    public void With_room_for_everything_it_takes_all_that_is_wanted()
    {
        var problem = A.Draft(A.Board(600, 300))
            .With(A.Device("echo").Drawing(50).Doing("delay"), A.Device("hall").Drawing(50).Doing("reverb"), A.Device("brick"))
            .With(A.OffBoard("clip").Doing("tuner"))
            .FedBy(A.Outlet("1"), A.Outlet("2")).Needing("delay").Wanting("reverb").Wanting("tuner").Problem();

        Assert.All(Found(problem), rig => Assert.Equal((20, 2), (rig!.Score.Wants, rig.Score.Devices)));
    }

    private static List<Proposal?> Found(RigProblem problem)
    {
        var question = new Question(problem);
        return [.. new FirstRig(question, PlannerOptions.Default, Ask.Patiently).Find().Select(f => new RigBuilder(question, PlannerOptions.Default, Ask.Patiently).TryBuild(f.Choice, f.Standings, f.Feeds))];
    }
}
