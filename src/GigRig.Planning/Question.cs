using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Planning.Fitting;
using GigRig.Planning.Powering;

namespace GigRig.Planning;

/// <summary>A device the planner may choose: it can stand on this board and be fed by this supply, at least alone.</summary>
internal sealed record Candidate(int Index, Device Device, Shape Shape, Consumer? Consumer)
{
    public GearId Id => Device.Id;
}

/// <summary>Something with functions: a candidate, an off-board thing, or the amp. <paramref name="Index"/> counts within its kind.</summary>
internal readonly record struct Performer(PerformerKind Kind, int Index);

internal enum PerformerKind
{
    Device,
    OffBoard,
    Amp,
}

/// <summary>What the searches need of a problem, worked out once. Things that can never come along are already left out.</summary>
internal sealed class Question
{
    public Question(RigProblem problem, PlanMemory? memory = null)
    {
        Problem = problem;
        Surface = new(problem.Board, problem.Options.SwitchSpacing.Value);
        Hunger = new(problem, memory?.Starved);
        var banned = problem.Options.Ban.ToHashSet();
        SupplyShape = Shapes.OfSupply(problem);
        var devices = problem.Devices
            .Where(d => !banned.Contains(d.Id) && d.Size.Height <= (problem.Board.ClearanceOver ?? d.Size.Height))
            .Select(d => (Device: d, Shape: Shapes.Of(problem, d), Consumer: Hunger.Of(d)))
            .ToArray();
        Shape[] held = [.. devices.Select(d => d.Shape).Append(SupplyShape).OfType<Shape>().Where(s => s.IsFixed)];
        Candidates =
        [
            .. devices
                .Where(c => (StandsBeside(held, c.Shape) || c.Shape.IsFixed) && Hunger.IsFedAlone(c.Consumer))
                .Select((c, i) => new Candidate(i, c.Device, c.Shape, c.Consumer)),
        ];
        OffBoard = [.. problem.OffBoard.Where(i => !banned.Contains(i.Id))];
        Functions = [.. ListFunctions()];
    }

    public RigProblem Problem { get; }

    public Surface Surface { get; }

    public Hunger Hunger { get; }

    public OutletClass[] Outlets => Hunger.Outlets;

    public bool ListsEveryFeed => Hunger.ListsEveryFeed;

    public Candidate[] Candidates { get; }

    public OffBoardItem[] OffBoard { get; }

    public (Performer Performer, RoleFunction Function)[] Functions { get; }

    /// <summary>Null unless the supply stands among the devices.</summary>
    public Shape? SupplyShape { get; }

    public PowerSearch Power => Hunger.Search;

    /// <summary>Board, supply and amp: carried whatever is chosen. Grams.</summary>
    public int FixedMass => Problem.Board.Mass.Value + (Problem.Supply?.Mass.Value ?? 0) + (Problem.Amp?.Mass.Value ?? 0);

    /// <summary>The weight of everything that is wanted.</summary>
    public long AllWants =>
        Problem.Event.Needs.Where(n => n.Level == NeedLevel.Want).Sum(n => (long)n.Weight)
        + Problem.Event.Sounds.Where(s => s.Level == NeedLevel.Want).Sum(s => (long)s.Weight);

    /// <summary>Candidates and off-board things in one count: candidates first. -1 for the amp.</summary>
    public int ThingOf(Performer performer) => performer.Kind switch
    {
        PerformerKind.Device => performer.Index,
        PerformerKind.OffBoard => Candidates.Length + performer.Index,
        _ => -1,
    };

    /// <summary>The shapes of a choice, in its order, with the supply last where it stands among them.</summary>
    public Shape[] ShapesOf(IReadOnlyList<Candidate> chosen) => SupplyShape is null
        ? [.. chosen.Select(c => c.Shape)]
        : [.. chosen.Select(c => c.Shape), SupplyShape];

    /// <summary>
    /// For a single thing beside what is fixed the quick placer misses nothing: it looks wherever a body or plug can touch. Where switches must keep apart
    /// from fixed ones that does not hold, and only the board is asked.
    /// </summary>
    private bool StandsBeside(Shape[] held, Shape shape)
    {
        Shape[] all = Surface.SwitchSpacing > 0 ? [shape] : [.. held.Where(h => h != shape), shape];
        return new QuickFit(Surface, seed: 0).Place(all, [.. Enumerable.Range(0, all.Length)]).Standings.Any(s => s.Item == all.Length - 1);
    }

    private IEnumerable<(Performer Performer, RoleFunction Function)> ListFunctions()
    {
        foreach (var candidate in Candidates)
        {
            foreach (var function in candidate.Device.Functions)
                yield return (new(PerformerKind.Device, candidate.Index), function);
        }

        foreach (var function in Problem.Amp?.Functions ?? [])
            yield return (new(PerformerKind.Amp, 0), function);
        for (var i = 0; i < OffBoard.Length; i++)
        {
            foreach (var function in OffBoard[i].Functions)
                yield return (new(PerformerKind.OffBoard, i), function);
        }
    }
}
