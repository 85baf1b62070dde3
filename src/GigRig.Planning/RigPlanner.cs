using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Planning.Arranging;
using GigRig.Planning.Choosing;
using GigRig.Planning.Explaining;
using GigRig.Planning.Fitting;

namespace GigRig.Planning;

/// <summary>The one door: a problem in, a proposed rig, a reason why there is none, or an honest "undecided" out. Safe to call from many threads.</summary>
/// <param name="memory">Kept between questions; null: each starts from nothing, and the same question gets the same answer.</param>
public sealed class RigPlanner(PlanMemory? memory = null)
{
    /// <summary>A search that does not end by itself leaves some of the time for arranging what it found, or for saying why it found nothing.</summary>
    private const double SearchShare = 0.85;

    /// <summary>How often what was left open is asked again.</summary>
    private const int MostTimesHarder = 3;

    /// <summary>Runs in the background for at most the problem's time limit. Calling it off keeps the best rig so far and never throws.</summary>
    /// <param name="progress">Told of each better rig as it is found.</param>
    public Task<PlanOutcome> PlanAsync(RigProblem problem, PlannerOptions? options = null, IProgress<PlanProgress>? progress = null, CancellationToken cancel = default) =>
        Task.Run(() => Remembering(problem, options ?? PlannerOptions.Default, progress, new Clock(problem.Options.TimeLimit, cancel)), CancellationToken.None);

    /// <summary>
    /// The same things stood better, with the chain, the hook-up and whatever is fixed left as they are: shorter leads, then an easier reach, then fewer lines.
    /// A rig that does not stand is stood anew. Runs in the background for at most the problem's time limit; calling it off keeps the best so far and never throws.
    /// </summary>
    /// <param name="rig">May break rules; those about places are mended, the others stay broken.</param>
    /// <param name="progress">Told of each better rig as it is found.</param>
    public Task<TidyOutcome> TidyAsync(RigProblem problem, Rig rig, PlannerOptions? options = null, IProgress<TidyOutcome.Tidied>? progress = null, CancellationToken cancel = default) =>
        Task.Run(
            () => new Tidying(problem, rig, options ?? PlannerOptions.Default, new Clock(problem.Options.TimeLimit, cancel)).Run(better => progress?.Report(better)),
            CancellationToken.None);

    /// <summary>Feeds for all of these devices together, or why there are none. Mostly a matter of milliseconds, at most of the problem's time limit.</summary>
    /// <param name="devices">Those that are not known or take no power need nothing.</param>
    /// <param name="before">How they were fed until now: plugs stay where they are as far as may be.</param>
    public HookUpAnswer HookUp(RigProblem problem, IEnumerable<GearId> devices, IEnumerable<Feed>? before = null, CancellationToken cancel = default) =>
        HookUpDoor.Answer(problem, devices, before ?? [], new Clock(problem.Options.TimeLimit, cancel));

    /// <summary>What is learned on the way serves at least the reasons and repairs of the same question.</summary>
    private PlanOutcome Remembering(RigProblem problem, PlannerOptions options, IProgress<PlanProgress>? progress, Clock clock)
    {
        var kept = options.Memory ?? memory ?? new PlanMemory();
        var outcome = Plan(problem, options with { Memory = kept }, progress, clock);
        if (outcome is PlanOutcome.Proposed proposed)
            kept.Remember(proposed.Best.Rig);
        return outcome;
    }

    internal static PlanOutcome Plan(RigProblem problem, PlannerOptions options, IProgress<PlanProgress>? progress, Clock clock)
    {
        if (Faults.Of(problem) is { Count: > 0 } faults)
            return Faulty(problem, faults, options, clock);
        var question = new Question(problem, options.Memory);
        var search = Search(question, options, progress, clock);
        if (search.Best is { } best)
            return Propose(question, options, search, best, progress, clock);
        if (!search.IsClosed)
            return new PlanOutcome.Undecided(search.Bound, clock.Elapsed);
        if (!options.Explain)
            return new PlanOutcome.Impossible(Facts.Of(problem).Select(f => f.AsPart()).ToValueList(), [], clock.Elapsed);
        var conflict = new ConflictFinder(problem, options, clock).Find();
        return new PlanOutcome.Impossible(conflict, new RepairFinder(problem, options, clock).For(conflict), clock.Elapsed);
    }

    /// <summary>Where questions of fit or power were left open for want of work, not of time, all is asked again with more work for each.</summary>
    private static RigSearch Search(Question question, PlannerOptions options, IProgress<PlanProgress>? progress, Clock clock)
    {
        var time = clock.Within(SearchShare * clock.Left);
        var known = options.Memory?.Best.BoundOn(question.Problem);
        RigSearch? last = null;
        for (var times = 0; ; times++, options = options.Harder())
        {
            RigSearch? search = null;
            search = new RigSearch(question, options, new Fitter(question.Surface, options), time, p => progress?.Report(new(p, search!.Bound, clock.Elapsed)))
            {
                KnownBound = Math.Min(last?.Bound ?? long.MaxValue, known?.Wants ?? long.MaxValue),
                KnownBest = known,
            };
            if (last is { Best: { } best, BestChoice: { } choice })
                search.Begin(best, choice);
            search.Run();
            last = search;
            if (search.IsClosed || !search.IsLeftOpen || options.FirstWillDo || times == MostTimesHarder)
                return search;
        }
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

    private static PlanOutcome Propose(Question question, PlannerOptions options, RigSearch search, Proposal best, IProgress<PlanProgress>? progress, Clock clock)
    {
        var arrange = question.Problem.Options.Arrange && !options.FirstWillDo;
        if (arrange)
            best = Arranged(best, p => progress?.Report(new(p, search.Bound, clock.Elapsed)));
        var alternatives = new List<Proposal>();
        List<Choice> answered = [search.BestChoice!];
        while (search.IsClosed && alternatives.Count < question.Problem.Options.Alternatives && !clock.IsUp)
        {
            var next = new RigSearch(question, options, search.Fitter, clock);
            foreach (var choice in answered)
                next.Exclude(choice);
            next.Run();
            if (next.Best is not { } other)
                break;
            alternatives.Add(arrange ? Arranged(other, _ => { }) : other);
            answered.Add(next.BestChoice!);
        }

        var repairs = options.Explain ? new RepairFinder(question.Problem, options, clock).For(best) : [];
        return new PlanOutcome.Proposed(best, search.IsClosed, search.Bound, alternatives.ToValueList(), repairs, clock.Elapsed);

        Proposal Arranged(Proposal given, Action<Proposal> found)
        {
            var builder = new RigBuilder(question, options, clock);
            var arrangement = new Arrangement(question.Problem, given.Rig);
            return builder.Judge(arrangement.Stood(new RoutedArranger(question.Problem, arrangement, new Arranger(arrangement, question.Surface, options)).Improve(
                arrangement.Given() ?? throw new InvalidOperationException("A proposed rig does not stand."),
                clock,
                better => found(builder.Judge(arrangement.Stood(better))))));
        }
    }
}
