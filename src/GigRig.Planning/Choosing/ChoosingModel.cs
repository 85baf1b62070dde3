using GigRig.Domain.Wishes;
using GigRig.Planning.Fitting;
using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Which things come along. A relaxation of the whole question: coverage and limits exactly, power nearly, space by bounds and by what it has been told failed.
/// So its best set, once it stands and is fed, is the best of all.
/// </summary>
internal sealed class ChoosingModel
{
    // The linear relaxation matters for covering with knapsacks: without it large libraries take many times longer.
    private const string Parameters = "linearization_level:2";

    private readonly ChoiceVariables variables;
    private readonly Objective objective;
    private readonly int seed;
    private GeometryModel? geometry;
    private TimeSpan? workLeft;

    /// <param name="answered">No set is chosen that holds all of one of these.</param>
    public ChoosingModel(Question question, int seed, Clock clock, IEnumerable<Choice> answered)
    {
        this.seed = seed;
        variables = new(question, clock);
        var coverage = new CoverageParts(variables);
        LimitParts.Add(variables);
        PowerParts.Add(variables);
        foreach (var bound in AreaBounds.Of(question).Concat(LineBounds.Of(question, clock)).TakeWhile(_ => !clock.IsUp).Where(b => b.Binds))
            variables.Model.Add(LinearExpr.WeightedSum(variables.Devices, bound.Weights) <= bound.Most);
        RowParts.Add(variables);
        objective = new(variables, coverage);
        NoGoods = new(variables);
        foreach (var choice in answered)
            NoGoods.ForbidAllOf(choice);
        WantsBound = objective.MostWants;
    }

    public NoGoods NoGoods { get; }

    /// <summary>No set still to be chosen covers more weight of wants.</summary>
    public long WantsBound { get; private set; }

    /// <summary>Whether some of the work given is left.</summary>
    public bool HasWork => workLeft is null || workLeft > TimeSpan.Zero;

    /// <summary>How much the model may work from now on, in the solver's own seconds; null: as much as there is time for.</summary>
    public void Give(TimeSpan? work) => workLeft = work;

    /// <summary>Lets the model place things itself: slower a round, but what it then proposes stands.</summary>
    public void AddGeometry()
    {
        if (geometry is not null)
            return;
        var question = variables.Question;
        geometry = new GeometryModel(variables.Model, question.Surface);
        foreach (var candidate in question.Candidates)
            geometry.Add(candidate.Shape, variables.Devices[candidate.Index], $"{candidate.Index}");
        if (question.SupplyShape is { } supply && !geometry.Add(supply, null, "supply"))
            variables.Model.AddBoolOr([variables.Always.Not()]);
    }

    /// <summary>From now on only sets strictly better than this, tier by tier, are asked for.</summary>
    public void MustBeat(Score score)
    {
        var values = objective.ValuesOf(score);
        BoolVar? allEqual = null;
        for (var s = 0; s < values.Length; s++)
        {
            var isLast = s == values.Length - 1;
            var atLeast = variables.Model.Add(objective.Sums[s].Sum >= values[s] + (isLast ? 1 : 0));
            if (allEqual is not null)
                atLeast.OnlyEnforceIf(allEqual);
            if (isLast)
                continue;
            var equal = variables.Model.NewBoolVar($"no better in sum {s}");
            variables.Model.Add(objective.Sums[s].Sum >= values[s] + 1).OnlyEnforceIf(allEqual is null ? [equal.Not()] : [equal.Not(), allEqual]);
            allEqual = equal;
        }
    }

    /// <summary>Whether, asked once more in another way, nothing at all can be chosen. A proof that reaches a musician rests on two runs.</summary>
    /// <param name="budget">The solver's seconds of work for it; null: whatever time is left.</param>
    public bool IsSurelyExhausted(Clock clock, TimeSpan? budget) =>
        Solve(clock, null, out _, "cp_model_presolve:false", budget) is ChoosingAnswer.Exhausted;

    /// <summary>The best set whose bodies cover no more than this share of the board: not the best of all, but likely to stand.</summary>
    public ChoosingAnswer ChooseWithin(double share, Clock clock)
    {
        var question = variables.Question;
        var most = (long)(share * question.Surface.Width * question.Surface.Depth) - (question.SupplyShape?.BodyArea ?? 0);
        var held = variables.Model.NewBoolVar("held");
        variables.Model.Add(LinearExpr.WeightedSum(variables.Devices, question.Candidates.Select(c => (long)c.Shape.BodyArea)) <= most).OnlyEnforceIf(held);
        Settle(held, true);
        var answer = Solve(clock, objective.Sums[0].Sum, out _);
        Settle(held, false);
        return answer;
    }

    /// <param name="anyWillDo">Ask for a set that meets the musts, not for the best one.</param>
    public ChoosingAnswer Choose(Clock clock, bool anyWillDo)
    {
        if (anyWillDo)
            return Solve(clock, null, out _);
        ChoosingAnswer? answer = null;
        var stages = new List<BoolVar>();
        for (var s = 0; s < objective.Sums.Length; s++)
        {
            var next = Solve(clock, objective.Sums[s].Sum, out var bound);
            if (s == 0 && bound is { } most)
                WantsBound = Math.Min(WantsBound, objective.Sums[0].FirstWithin(most));
            if (next is not ChoosingAnswer.Chosen chosen)
            {
                answer = answer is ChoosingAnswer.Chosen before ? before with { IsBest = false } : next;
                break;
            }

            answer = chosen;
            if (!chosen.IsBest)
                break;
            if (s < objective.Sums.Length - 1)
                stages.Add(Hold(objective.Sums[s].Sum, bound!.Value));
        }

        foreach (var stage in stages)
            Settle(stage, false);
        return answer!;
    }

    private ChoosingAnswer Solve(Clock clock, LinearExpr? maximise, out long? bound, string parameters = Parameters, TimeSpan? work = null)
    {
        variables.Model.Model.Objective = null;
        variables.Model.Model.FloatingPointObjective = null;
        if (maximise is not null)
            variables.Model.Maximize(maximise);
        using var run = new CpSatRun();
        run.Solve(variables.Model, clock, work ?? workLeft, seed, parameters);
        workLeft -= run.Work;

        // A run that found nothing may not have got as far as a bound, and then reads as zero.
        bound = maximise is null || !run.HasSolution ? null : (long)Math.Floor(run.BestBound + 0.5);
        if (run.Status == CpSolverStatus.Infeasible)
            return new ChoosingAnswer.Exhausted();
        return run.HasSolution
            ? new ChoosingAnswer.Chosen(Read(run), run.Status == CpSolverStatus.Optimal && (maximise is null || run.BestBound - run.ObjectiveValue < 0.5))
            : new ChoosingAnswer.OutOfTime();
    }

    private Choice Read(CpSatRun run)
    {
        var devices = Taken(run, variables.Devices);
        return new(devices, Taken(run, variables.OffBoard), geometry is null ? null : ReadStandings(run, geometry, devices));
    }

    private Standing[] ReadStandings(CpSatRun run, GeometryModel placed, int[] devices)
    {
        var supply = variables.Question.SupplyShape is null ? Enumerable.Empty<int>() : [variables.Question.Candidates.Length];
        return [.. devices.Concat(supply).Select((thing, position) => placed.Read(run, thing) with { Item = position })];
    }

    private static int[] Taken(CpSatRun run, BoolVar[] literals) => [.. Enumerable.Range(0, literals.Length).Where(i => run.IsTrue(literals[i]))];

    /// <summary>Keeps a sum up for the later stages of this round only.</summary>
    private BoolVar Hold(LinearExpr sum, long value)
    {
        var held = variables.Model.NewBoolVar("held");
        variables.Model.Add(sum >= value).OnlyEnforceIf(held);
        Settle(held, true);
        return held;
    }

    private void Settle(BoolVar literal, bool value)
    {
        var domain = variables.Model.Model.Variables[literal.GetIndex()].Domain;
        domain[0] = domain[1] = value ? 1 : 0;
    }
}
