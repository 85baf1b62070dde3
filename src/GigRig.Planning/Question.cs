using GigRig.Domain;
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
    public Question(RigProblem problem)
    {
        Problem = problem;
        Surface = new(problem.Board, problem.Options.SwitchSpacing.Value);
        Outlets = OutletClass.Of(problem.Supply);
        var patterns = new FeedPatterns(Outlets, problem.Adapters);
        var banned = problem.Options.Ban.ToHashSet();
        SupplyShape = problem.Supply is { Mount: SupplyMount.Top, Size: { } size } supply ? Held(supply.Id, Shapes.Of(size)) : null;
        var devices = problem.Devices
            .Where(d => !banned.Contains(d.Id) && d.Size.Height <= (problem.Board.ClearanceOver ?? d.Size.Height))
            .Select(d => (Device: d, Shape: Held(d.Id, Shapes.Of(d, problem.Options.Plugs)), Consumer: ConsumerOf(d, patterns)))
            .ToArray();
        Shape[] held = [.. devices.Select(d => d.Shape).Append(SupplyShape).OfType<Shape>().Where(s => s.IsFixed)];
        Candidates =
        [
            .. devices
                .Where(c => (StandsBeside(held, c.Shape) || c.Shape.IsFixed) && IsFedAlone(c.Consumer))
                .Select((c, i) => new Candidate(i, c.Device, c.Shape, c.Consumer)),
        ];
        ListsEveryFeed = patterns.IsComplete;
        OffBoard = [.. problem.OffBoard.Where(i => !banned.Contains(i.Id))];
        Functions = [.. ListFunctions()];
        Power = new(Outlets, problem.Adapters, problem.Supply?.TotalCurrent?.Value);
    }

    public RigProblem Problem { get; }

    public Surface Surface { get; }

    public OutletClass[] Outlets { get; }

    /// <summary>False where outlets can be joined in more ways than could be listed: then nothing that is not fed is proved unfit.</summary>
    public bool ListsEveryFeed { get; }

    public Candidate[] Candidates { get; }

    public OffBoardItem[] OffBoard { get; }

    public (Performer Performer, RoleFunction Function)[] Functions { get; }

    /// <summary>Null unless the supply stands among the devices.</summary>
    public Shape? SupplyShape { get; }

    public PowerSearch Power { get; }

    /// <summary>Board, supply and amp: carried whatever is chosen. Grams.</summary>
    public int FixedMass => Problem.Board.Mass.Value + (Problem.Supply?.Mass.Value ?? 0) + (Problem.Amp?.Mass.Value ?? 0);

    /// <summary>The shapes of a choice, in its order, with the supply last where it stands among them.</summary>
    public Shape[] ShapesOf(IReadOnlyList<Candidate> chosen) => SupplyShape is null
        ? [.. chosen.Select(c => c.Shape)]
        : [.. chosen.Select(c => c.Shape), SupplyShape];

    private Consumer? ConsumerOf(Device device, FeedPatterns patterns)
    {
        if (device.Power is not { } need)
            return null;
        var draw = (int)Math.Ceiling(need.Current.Value * (1 + Problem.Options.Headroom));
        return new(device.Id, need, draw, patterns.For(need, draw));
    }

    /// <summary>
    /// For a single thing beside what is fixed the quick placer misses nothing: it looks wherever a body or plug can touch. Where switches must keep apart
    /// from fixed ones that does not hold, and only the board is asked.
    /// </summary>
    private bool StandsBeside(Shape[] held, Shape shape)
    {
        Shape[] all = Surface.SwitchSpacing > 0 ? [shape] : [.. held.Where(h => h != shape), shape];
        return new QuickFit(Surface, seed: 0).Place(all, [.. Enumerable.Range(0, all.Length)]).Standings.Any(s => s.Item == all.Length - 1);
    }

    private Shape Held(GearId id, Shape shape) =>
        Problem.Options.Fixed.FirstOrDefault(f => f.Id == id) is { } place ? shape.At(place.Turn, place.At.X.Value, place.At.Y.Value) : shape;

    private bool IsFedAlone(Consumer? consumer) =>
        consumer is null || consumer.Need.Battery || (consumer.Patterns.Length > 0 && consumer.Draw <= (Problem.Supply?.TotalCurrent?.Value ?? int.MaxValue));

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
