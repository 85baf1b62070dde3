using System.Diagnostics;
using System.Globalization;
using GigRig.Benchmarks.Contenders;
using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>The whole question as one CP-SAT model: wishes and limits the same for all, layout and hook-up as given.</summary>
internal sealed class OneModel(Func<Belongings, ILayoutModel> layouts, Func<Belongings, IHookUpModel> hookUps, string parameters)
{
    private const int Workers = 2;

    /// <summary>As a textbook would have it: optional rectangles and outlet variables.</summary>
    public static OneModel Textbook { get; } = new(b => new RectanglePerTurn(b), b => new OutletAssignment(b), "");

    /// <summary>What is known to make one model faster.</summary>
    public static OneModel Best { get; } = new(b => new TurningRectangles(b), b => new OutletCounts(b), "linearization_level:2");

    /// <summary>What of this problem both opponents do not know; then their answers may be too good or not good enough.</summary>
    public static IReadOnlyList<string> LeavesOut(RigProblem problem) =>
    [
        .. problem.Adapters.Splitter > 0 ? ["splitters"] : Array.Empty<string>(),
        .. problem.Options.SwitchSpacing.Value > 0 ? ["switch spacing"] : Array.Empty<string>(),
    ];

    public Answer Solve(RigProblem problem)
    {
        var started = Stopwatch.GetTimestamp();
        var belongings = new Belongings(problem);
        var wishes = new WishModel(belongings);
        LimitModel.Add(belongings);
        var layout = layouts(belongings);
        var hookUp = hookUps(belongings);
        Answer answer = new(AnswerKind.Open);
        foreach (var sum in new Goal(belongings, wishes).Sums)
        {
            belongings.Model.Model.Objective = null;
            belongings.Model.Maximize(sum);
            using var solver = new CpSolver { StringParameters = Parameters(problem.Options.TimeLimit - Stopwatch.GetElapsedTime(started)) };
            var status = solver.Solve(belongings.Model);
            if (status == CpSolverStatus.ModelInvalid)
                throw new InvalidOperationException($"An opponent built a model the solver refuses: {belongings.Model.Validate()}");
            if (status == CpSolverStatus.Infeasible)
                return new(AnswerKind.Impossible);
            if (status == CpSolverStatus.Unknown)
                return answer with { Kind = AnswerKind.Open };
            answer = new(status == CpSolverStatus.Optimal ? AnswerKind.Proved : AnswerKind.Open, Read(problem, belongings, layout, hookUp, solver));
            if (status == CpSolverStatus.Feasible)
                return answer;
            belongings.Model.Add(sum >= (long)Math.Round(solver.ObjectiveValue));
        }

        return answer;
    }

    private string Parameters(TimeSpan left) => string.Create(
        CultureInfo.InvariantCulture,
        $"num_workers:{Workers} random_seed:1 max_time_in_seconds:{Math.Max(0.01, left.TotalSeconds):0.###} {parameters}");

    private static Rig Read(RigProblem problem, Belongings belongings, ILayoutModel layout, IHookUpModel hookUp, CpSolver solved)
    {
        var stands = layout.Read(solved).ToLookup(p => p.Id == problem.Supply?.Id);
        return new(
            stands[false].ToValueList(),
            stands[true].SingleOrDefault(),
            belongings.OffBoard.Where(i => solved.BooleanValue(i.Taken)).Select(i => i.Thing.Id).ToValueList(),
            hookUp.Read(solved).ToValueList(),
            ChainOrder.Order(problem, stands[false].Select(p => p.Id)));
    }
}
