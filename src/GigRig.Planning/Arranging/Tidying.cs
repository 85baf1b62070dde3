using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Wishes;
using GigRig.Planning.Explaining;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Arranging;

/// <summary>The same things stood better: a rig that stands is improved, one that does not is stood anew.</summary>
internal sealed class Tidying
{
    private readonly RigProblem problem;
    private readonly PlannerOptions options;
    private readonly Clock clock;
    private readonly Rig given;
    private readonly Surface surface;
    private readonly Arrangement arrangement;

    public Tidying(RigProblem asked, Rig rig, PlannerOptions options, Clock clock)
    {
        this.options = options;
        this.clock = clock;
        given = rig;
        problem = WithFixed(asked, [.. asked.Options.Fixed.Where(place => rig.Placements.Any(p => p.Id == place.Id) || place.Id == asked.Supply?.Id)]);
        surface = new(problem.Board, problem.Options.SwitchSpacing.Value);
        arrangement = new(problem, rig);
    }

    /// <param name="found">Told of each better rig.</param>
    public TidyOutcome Run(Action<TidyOutcome.Tidied> found)
    {
        if (Faults.Of(problem) is { Count: > 0 } faults)
            return new TidyOutcome.NoRoom(faults.Select(f => new ConflictPart(f.RuleId, f.Culprits, f.Sentence)).ToValueList());
        var start = AsGiven();
        if (start is null)
        {
            switch (new Fitter(surface, options).Fit(arrangement.Shapes, clock))
            {
                case FitAnswer.Misfit misfit:
                    return NoRoom(misfit);
                case FitAnswer.Stands stands:
                    start = [.. stands.Standings.OrderBy(s => s.Item)];
                    break;
                default:
                    return new TidyOutcome.Undecided();
            }
        }

        return Judged(new RoutedArranger(problem, arrangement, new Arranger(arrangement, surface, options)).Improve(start, clock, better => found(Judged(better))));
    }

    private static RigProblem WithFixed(RigProblem problem, ValueList<Placement> places) =>
        places.Count == problem.Options.Fixed.Count ? problem
        : RigProblem.Create(problem.Draft with { Options = problem.Options with { Fixed = places } }) is ProblemCheck.Accepted accepted ? accepted.Problem
        : throw new InvalidOperationException("A problem with fewer fixed things is refused.");

    /// <summary>Null where it does not stand so.</summary>
    private Standing[]? AsGiven()
    {
        if (arrangement.Given() is not { } standings)
            return null;
        var layout = new Layout(surface, arrangement.Shapes);
        foreach (var standing in standings)
        {
            if (!layout.Admits(arrangement.Shapes[standing.Item].Poses[standing.Pose], standing.X, standing.Y))
                return null;
            layout.Stand(standing.Item, standing.Pose, standing.X, standing.Y);
        }

        return standings;
    }

    private TidyOutcome.NoRoom NoRoom(FitAnswer.Misfit misfit)
    {
        ValueList<Domain.Gear.GearId> culprits = [.. misfit.Items.Select(arrangement.IdOf)];
        var names = culprits.Select(problem.NameOf).ToArray();
        var who = names.Length == 1 ? $"{names[0]} cannot" : $"{names.Listed()} cannot all";
        var board = new ConflictPart(RuleIds.InsideBoard, culprits, $"{who} stand on {problem.Board.Name}, which is {problem.Board.Width:bare} × {problem.Board.Depth}.");
        return new([board, .. Facts.Fixed(problem).Where(f => f.Culprits.Any(culprits.Contains)).Select(f => f.AsPart())]);
    }

    /// <summary>Throws where a rule about places is broken, or one that was not broken before: then a search is at fault, not the musician.</summary>
    private TidyOutcome.Tidied Judged(Standing[] standings)
    {
        var rig = arrangement.Stood(standings);
        var before = RuleBook.Check(problem, given).Select(v => v.RuleId).ToHashSet();
        var broken = RuleBook.Check(problem, rig).Where(v => Faults.OfPlaces.Contains(v.RuleId) || !before.Contains(v.RuleId)).ToArray();
        if (broken.Length > 0)
            throw new InvalidOperationException($"Tidying broke rules: {string.Join(" ", broken.Select(v => $"[{v.RuleId}] {v.Sentence}"))}");
        return new(rig, Scorer.Score(problem, rig));
    }
}
