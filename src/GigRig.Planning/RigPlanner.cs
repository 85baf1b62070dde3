using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Planning.Arranging;
using GigRig.Planning.Choosing;
using GigRig.Planning.Explaining;
using GigRig.Planning.Fitting;

namespace GigRig.Planning;

/// <summary>The one door: a problem in, a proposed rig, a reason why there is none, or an honest "undecided" out. Safe to call from many threads.</summary>
public sealed class RigPlanner
{
    /// <summary>A search that does not end by itself leaves some of the time for arranging what it found, or for saying why it found nothing.</summary>
    private const double SearchShare = 0.85;

    /// <summary>Runs in the background for at most the problem's time limit. Calling it off keeps the best rig so far and never throws.</summary>
    /// <param name="progress">Told of each better rig as it is found.</param>
    public Task<PlanOutcome> PlanAsync(RigProblem problem, PlannerOptions? options = null, IProgress<PlanProgress>? progress = null, CancellationToken cancel = default) =>
        Task.Run(() => Plan(problem, options ?? PlannerOptions.Default, progress, new Clock(problem.Options.TimeLimit, cancel)), CancellationToken.None);

    internal static PlanOutcome Plan(RigProblem problem, PlannerOptions options, IProgress<PlanProgress>? progress, Clock clock)
    {
        if (Faults.Of(problem) is { Count: > 0 } faults)
            return Faulty(problem, faults, options, clock);
        var question = new Question(problem);
        var fitter = new Fitter(question.Surface, options);
        RigSearch? search = null;
        search = new RigSearch(question, options, fitter, clock.Within(SearchShare * clock.Left)) { Found = p => progress?.Report(new(p, search!.Bound, clock.Elapsed)) };
        search.Run();
        if (search.Best is { } best)
            return Propose(question, options, fitter, search, best, progress, clock);
        if (!search.IsClosed)
            return new PlanOutcome.Undecided(search.Bound, clock.Elapsed);
        if (!options.Explain)
            return new PlanOutcome.Impossible(Facts.Of(problem).Select(f => f.AsPart()).ToValueList(), [], clock.Elapsed);
        var conflict = new ConflictFinder(problem, options, clock).Find();
        return new PlanOutcome.Impossible(conflict, new RepairFinder(problem, options, clock).For(conflict), clock.Elapsed);
    }

    /// <summary>The broken rules, and who was fixed there.</summary>
    private static PlanOutcome.Impossible Faulty(RigProblem problem, IReadOnlyList<Violation> faults, PlannerOptions options, Clock clock)
    {
        var culprits = faults.SelectMany(f => f.Culprits).ToHashSet();
        var conflict = faults.Select(f => new ConflictPart(f.RuleId, f.Culprits, f.Sentence))
            .Concat(Facts.Fixed(problem).Where(f => f.Culprits.Any(culprits.Contains)).Select(f => f.AsPart()))
            .ToValueList();
        return new(conflict, options.Explain ? new RepairFinder(problem, options, clock).For(conflict) : [], clock.Elapsed);
    }

    private static PlanOutcome Propose(Question question, PlannerOptions options, Fitter fitter, RigSearch search, Proposal best, IProgress<PlanProgress>? progress, Clock clock)
    {
        var arrange = question.Problem.Options.Arrange && !options.FirstWillDo;
        var arranger = new Arranger(question, options, fitter);
        if (arrange)
            best = arranger.Arrange(search.BestChoice!, best, clock, p => progress?.Report(new(p, search.Bound, clock.Elapsed)));
        var alternatives = new List<Proposal>();
        List<Choice> answered = [search.BestChoice!];
        while (search.IsClosed && alternatives.Count < question.Problem.Options.Alternatives && !clock.IsUp)
        {
            var next = new RigSearch(question, options, fitter, clock);
            foreach (var choice in answered)
                next.Exclude(choice);
            next.Run();
            if (next.Best is not { } other)
                break;
            alternatives.Add(arrange ? arranger.Arrange(next.BestChoice!, other, clock, _ => { }) : other);
            answered.Add(next.BestChoice!);
        }

        var repairs = options.Explain ? new RepairFinder(question.Problem, options, clock).For(best) : [];
        return new PlanOutcome.Proposed(best, search.IsClosed, search.Bound, alternatives.ToValueList(), repairs, clock.Elapsed);
    }
}
