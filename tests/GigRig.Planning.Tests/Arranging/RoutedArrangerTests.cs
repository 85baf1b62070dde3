using GigRig.Benchmarks.Generating;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.Planning.Arranging;
using GigRig.Planning.Fitting;
using GigRig.TestKit.Building;
using GigRig.TestKit.Judging;

namespace GigRig.Planning.Tests.Arranging;

public sealed class RoutedArrangerTests
{
    private static readonly PlannerOptions Quick = PlannerOptions.Default with { Explain = false, ArrangeTries = 60 };

    public static TheoryData<int> Seeds { get; } = new(Enumerable.Range(1, 6));

    /// <summary>Leads as the lead plan measures them, around bodies.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public async Task Of_the_layouts_found_it_takes_the_one_with_the_shortest_leads_around_bodies(int seed)
    {
        var (problem, arrangement, given, surface) = await StoodAsync(seed);
        var seen = new List<Standing[]> { given };

        var taken = new RoutedArranger(problem, arrangement, new Arranger(arrangement, surface, Quick)).Improve(given, Ask.Patiently, seen.Add);

        Assert.Equal(seen.TakeLast(RoutedArranger.MostCompared).Min(layout => LeadsOf(problem, arrangement.Stood(layout))), LeadsOf(problem, arrangement.Stood(taken)));
        Assert.InRange(arrangement.CostOf(taken).CompareTo(arrangement.CostOf(given)), -1, 0);
        Assert.Empty(NaiveRigChecker.Faults(problem, arrangement.Stood(taken)));
    }

    [Fact]
    public async Task Measured_straight_and_around_bodies_layouts_are_not_always_in_the_same_order()
    {
        var reversed = 0;
        foreach (var seed in Enumerable.Range(1, 6))
        {
            var (problem, arrangement, given, surface) = await StoodAsync(seed);
            var seen = new List<Standing[]>();
            new Arranger(arrangement, surface, Quick).Improve(given, Ask.Patiently, seen.Add);
            reversed += seen.Zip(seen.Skip(1)).Count(pair => LeadsOf(problem, arrangement.Stood(pair.Second)) > LeadsOf(problem, arrangement.Stood(pair.First)));
        }

        Assert.NotEqual(0, reversed);
    }

    [Fact]
    public async Task Called_off_it_takes_the_last()
    {
        var (problem, arrangement, given, surface) = await StoodAsync(1);
        using var cancel = new CancellationTokenSource();
        var seen = new List<Standing[]>();

        var taken = new RoutedArranger(problem, arrangement, new Arranger(arrangement, surface, Quick)).Improve(given, new Clock(TimeSpan.FromMinutes(1), cancel.Token), layout =>
        {
            seen.Add(layout);
            if (seen.Count == 3)
                cancel.Cancel();
        });

        Assert.Same(seen[^1], taken);
    }

    private static async Task<(RigProblem Problem, Arrangement Arrangement, Standing[] Given, Surface Surface)> StoodAsync(int seed)
    {
        var problem = new LibraryGenerator(seed).Make(24, 600, 320).Problem();
        var proposed = Assert.IsType<PlanOutcome.Proposed>(await new RigPlanner().PlanAsync(problem, Quick, cancel: TestContext.Current.CancellationToken));
        var arrangement = new Arrangement(problem, proposed.Best.Rig);
        return (problem, arrangement, arrangement.Given()!, new Surface(problem.Board, problem.Options.SwitchSpacing.Value));
    }

    private static int LeadsOf(RigProblem problem, Rig rig) => LeadPlan.Of(problem, rig).Hops.Sum(hop => hop.Route?.Length.Value ?? 0);
}
