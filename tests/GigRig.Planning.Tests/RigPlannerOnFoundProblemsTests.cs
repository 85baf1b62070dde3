using GigRig.Domain.Documents;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Instances;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests;

/// <summary>Questions that were once answered wrongly.</summary>
public sealed class RigPlannerOnFoundProblemsTests
{
    public static TheoryData<string> Names { get; } = new(FoundProblems.All.Select(found => found.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public async Task It_is_answered_rightly_now(string name)
    {
        var found = FoundProblems.All.Single(f => f.Name == name);
        var problem = Assert.IsType<ProblemCheck.Accepted>(RigProblemJson.Read(found.Problem.GetRawText())).Problem;

        var outcome = await new RigPlanner().PlanAsync(problem, cancel: TestContext.Current.CancellationToken);

        if (found.Status == "impossible")
        {
            Assert.True(outcome is PlanOutcome.Impossible, found.Tale);
            return;
        }

        var proposed = Assert.IsType<PlanOutcome.Proposed>(outcome);
        var rigs = proposed.Alternatives.Prepend(proposed.Best).ToList();
        Assert.True(proposed.Proven, found.Tale);
        Assert.Equal(found.Scores, rigs.Select(rig => (long[])[rig.Score.Wants, rig.Score.Rating, rig.Score.Devices, rig.Score.Mass.Value]));
        Assert.All(rigs, rig => Assert.Empty(NaiveRigChecker.Faults(problem, rig.Rig)));
    }
}
