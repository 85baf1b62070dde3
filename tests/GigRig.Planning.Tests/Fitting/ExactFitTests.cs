using GigRig.Domain.Rigs;
using GigRig.Planning.Fitting;
using GigRig.TestKit.Building;
using GigRig.TestKit.Instances;

namespace GigRig.Planning.Tests.Fitting;

/// <summary>On packings that are published with their answers (see tests/instances).</summary>
public sealed class ExactFitTests
{
    private static readonly TimeSpan Plenty = TimeSpan.FromSeconds(60);

    public static TheoryData<string> All { get; } = new(PublishedPackings.All.Select(p => p.Name));

    [Fact]
    public void A_no_that_is_said_twice_counts() => Assert.Empty(Decide("E10N10", Plenty, Plenty)!);

    [Fact]
    public void A_no_that_there_is_no_work_left_to_say_again_leaves_the_question_open() => Assert.Null(Decide("E10N10", Plenty, TimeSpan.Zero));

    [Fact]
    public void A_yes_need_not_be_said_again() => Assert.NotEmpty(Decide("E02F17", Plenty, TimeSpan.Zero)!);

    /// <summary>However little work the first or the second saying may take, a no is never wrong and a yes never needed.</summary>
    [Theory]
    [MemberData(nameof(All))]
    public void Out_of_work_it_never_says_no_of_what_fits_nor_yes_of_what_does_not(string name)
    {
        foreach (var milliseconds in new[] { 0, 0.01, 0.1, 1, 10, 100 })
        {
            var work = TimeSpan.FromMilliseconds(milliseconds);
            var found = Decide(name, work, work / 10);
            if (found is not null)
                Assert.Equal(Packing(name).Feasible, found.Count > 0);
        }
    }

    private static PublishedPacking Packing(string name) => PublishedPackings.All.Single(p => p.Name == name);

    private static IReadOnlyList<Standing>? Decide(string name, TimeSpan work, TimeSpan confirm)
    {
        var problem = Packing(name).ToProblem().Problem();
        var exact = new ExactFit(new Surface(problem.Board, switchSpacing: 0), PlannerOptions.Default.Seed, confirm);
        return exact.Decide([.. problem.Devices.Select(d => Shapes.Of(problem, d))], Ask.Patiently, work);
    }
}
