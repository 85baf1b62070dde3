using Google.OrTools.Sat;

namespace GigRig.Planning.Fitting;

/// <summary>Decides whether things can all stand together, by search to the end.</summary>
/// <param name="confirmBudget">What each further saying of a no may take; null: as much as the first.</param>
internal sealed class ExactFit(Surface surface, int seed, TimeSpan? confirmBudget = null)
{
    private enum Word
    {
        Yes,
        No,
        Open,
    }

    /// <summary>How much was done so far, in the solver's own seconds.</summary>
    public TimeSpan Work { get; private set; }

    /// <summary>Where they stand; an empty list is a proved no; null means that time ran out.</summary>
    public IReadOnlyList<Standing>? Decide(IReadOnlyList<Shape> shapes, Clock clock, TimeSpan budget)
    {
        var (word, standings) = Solve(shapes, clock, budget, seed, "");

        if (word == Word.No)
        {
            // Releases of the solver have called solvable packings infeasible (google/or-tools#4537, #4546, #5274): a no counts once it is said again another way.
            (word, standings) = Solve(shapes, clock, confirmBudget ?? budget, seed + 1, "cp_model_presolve:false");
            if (word == Word.Open)
                (word, standings) = Solve(shapes, clock, confirmBudget ?? budget, seed + 2, "cp_model_probing_level:0 symmetry_level:0 linearization_level:0");
        }

        return word switch
        {
            Word.Yes => standings,
            Word.No => [],
            _ => null,
        };
    }

    private (Word Word, IReadOnlyList<Standing> Standings) Solve(IReadOnlyList<Shape> shapes, Clock clock, TimeSpan budget, int runSeed, string extra)
    {
        var model = new CpModel();
        var geometry = new GeometryModel(model, surface);
        for (var i = 0; i < shapes.Count; i++)
        {
            if (!geometry.Add(shapes[i], null, $"{i}"))
                return (Word.No, []);
        }

        KeepAlikeInOrder(geometry, shapes);
        using var run = new CpSatRun();
        var status = run.Solve(model, clock, budget, runSeed, extra);
        Work += run.Work;
        return status switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => (Word.Yes, [.. shapes.Select((_, i) => geometry.Read(run, i))]),
            CpSolverStatus.Infeasible => (Word.No, []),
            _ => (Word.Open, []),
        };
    }

    private static void KeepAlikeInOrder(GeometryModel geometry, IReadOnlyList<Shape> shapes)
    {
        var last = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < shapes.Count; i++)
        {
            if (last.TryGetValue(shapes[i].Key, out var before))
                geometry.KeepInOrder(before, i);
            last[shapes[i].Key] = i;
        }
    }
}
