using System.Text.Json;
using GigRig.Benchmarks.Measuring;
using GigRig.Benchmarks.Problems;
using GigRig.Benchmarks.Reporting;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Tests.Benchmarks;

public sealed class SolveLineTests
{
    [Fact]
    public async Task It_tells_what_was_found_what_it_took_and_what_was_published()
    {
        var asked = PublishedProblems.Matching(["ngcut1"]).Single();
        var outcome = await new RigPlanner().PlanAsync(asked.Within(TimeSpan.FromSeconds(60)).Problem, cancel: TestContext.Current.CancellationToken);

        var line = JsonDocument.Parse(Line(asked, outcome).ToJson()).RootElement;

        Assert.Equal(
            ["file", "status", "proven", "score", "bound", "elapsedMs", "cpuMs", "peakMemoryMb", "placements", "published", "reached"],
            line.EnumerateObject().Select(member => member.Name));
        Assert.Equal("proposed", line.GetProperty("status").GetString());
        Assert.Equal(164, line.GetProperty("published").GetProperty("optimum").GetInt64());
        Assert.True(line.GetProperty("reached").GetBoolean());
    }

    [Theory]
    [InlineData("E02F17", true)]
    [InlineData("E10N10", false)]
    public void Impossible_contradicts_only_where_the_pieces_are_known_to_fit(string name, bool contradicts)
    {
        var impossible = new PlanOutcome.Impossible([new("no-set", [], "Nothing will do.")], [], TimeSpan.Zero);

        var line = Line(PublishedProblems.Matching([name]).Single(), impossible);

        Assert.Equal((!contradicts, contradicts), (line.Reached, line.Contradicts));
    }

    [Theory]
    [InlineData(164, false)]
    [InlineData(163, true)]
    public void Running_out_of_time_contradicts_only_with_a_bound_below_the_optimum(long bound, bool contradicts)
    {
        var line = Line(PublishedProblems.Matching(["ngcut1"]).Single(), new PlanOutcome.Undecided(bound, TimeSpan.Zero));

        Assert.Equal((false, contradicts), (line.Reached, line.Contradicts));
    }

    private static SolveLine Line(NamedProblem asked, PlanOutcome outcome) =>
        SolveLine.Of(asked, new Measured<PlanOutcome>(outcome, TimeSpan.Zero, TimeSpan.Zero, PeakBytes: 0));
}
