using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;

namespace GigRig.Web.Features.Workbench;

/// <summary>
/// A rig on the workbench: every move of the hands, judged by the rule book at once, and every one of them undone and redone. Broken rules are said, never
/// forbidden; only a locked thing stays where it is, and says so.
/// </summary>
public sealed class BoardEditor
{
    /// <summary>Either way from the board's front-left corner.</summary>
    private static readonly Millimetres FarthestPlace = 3000.Mm;

    private readonly BoardMoves moves;
    private readonly EditHistory<BoardEdit> history;

    public BoardEditor(RigProblem problem, BoardEdit start, SolveHookUp solve)
    {
        (Problem, moves, history) = (problem, new(problem, new(problem, solve)), new(start));
        Judge();
    }

    /// <summary>After every change of the rig, the locks or what is said.</summary>
    public event Action? Changed;

    public RigProblem Problem { get; }

    public BoardEdit Edit => history.Present;

    public Rig Rig => Edit.Rig;

    public ValueList<Violation> Violations { get; private set; }

    public Score Score { get; private set; }

    /// <summary>What was done last and what it brought, for reading out.</summary>
    public string Said { get; private set; } = "";

    /// <summary>The unit of what is said.</summary>
    public LengthUnit Unit { get; set; }

    public bool CanUndo => history.CanUndo;

    public bool CanRedo => history.CanRedo;

    public string NextUndo => history.NextUndo;

    public string NextRedo => history.NextRedo;

    /// <summary>Devices of the problem that are neither on the board nor laid aside, by name.</summary>
    public IEnumerable<Device> Shelf => Problem.Devices
        .Where(device => Edit.PlacementOf(device.Id) is null && Edit.Aside.All(aside => aside.Id != device.Id))
        .OrderBy(device => device.Name, StringComparer.CurrentCultureIgnoreCase);

    public IEnumerable<Violation> FaultsOf(GearId id) => Violations.Where(fault => fault.Culprits.Contains(id));

    /// <summary>What it would be at fault for if it stood there; nothing is moved.</summary>
    public IEnumerable<Violation> FaultsAt(GearId id, Point at) => Edit.PlacementOf(id) is null
        ? []
        : RuleBook.Check(Problem, moves.Move(Edit, id, at).Rig).Where(fault => fault.Culprits.Contains(id));

    /// <summary>Broken rules of which nothing on the board is at fault.</summary>
    public IEnumerable<Violation> FaultsOfAll => Violations.Where(fault => fault.Culprits.All(id => Edit.PlacementOf(id) is null));

    public IReadOnlyList<Turn> TurnsOf(GearId id) => moves.TurnsOf(id);

    public bool IsRemovable(GearId id) => id != Rig.Supply?.Id;

    /// <summary>Its front-left corner. Off the board is allowed, and marked; out of reach of any picture is not.</summary>
    public void MoveTo(GearId id, Point to)
    {
        if (IsFar(to.X) || IsFar(to.Y))
            Say($"{Name(id)} cannot stand at {EditWords.PlaceOf(to, Unit)}. Stay within {LengthText.Format(FarthestPlace, Unit)} of the board's corner.");
        else
            Handle(id, old => old.At == to ? null : (moves.Move(Edit, id, to), EditWords.Moved(Problem, id, to, Unit)));
    }

    /// <summary>To the next way it may stand.</summary>
    public void Turn(GearId id)
    {
        if (Edit.PlacementOf(id) is { } old && moves.NextTurn(Edit, id) == old.Turn)
            Say($"{Name(id)} may stand this way only. Its page under Gear says how it may be turned.");
        else
            Handle(id, _ => Turned(id, moves.NextTurn(Edit, id)));
    }

    public void TurnTo(GearId id, Turn turn) => Handle(id, old => old.Turn == turn ? null : Turned(id, turn));

    public void Swap(GearId one, GearId other)
    {
        if (one != other && Edit.PlacementOf(other) is not null && !Refuses(other))
            Handle(one, _ => (moves.Swap(Edit, one, other), $"{Name(one)} and {Name(other)} swapped"));
    }

    public void Replace(GearId gone, GearId come)
    {
        if (IsRemovable(gone) && Problem.FindDevice(come) is not null && Edit.PlacementOf(come) is null)
            Handle(gone, _ => (moves.Replace(Edit, gone, come), $"{Name(come)} in the place of {Name(gone)}"), about: come);
    }

    /// <summary>At the first free place; where there is none, in the middle, where it is marked.</summary>
    public void Add(GearId id)
    {
        if (Problem.FindDevice(id) is not { } device || Edit.PlacementOf(id) is not null)
            return;
        if (FreePlaces.First(Problem, Rig, device) is { } free)
            Do(moves.Add(Edit, free), $"{device.Name} added at {EditWords.PlaceOf(free.At, Unit)}", id);
        else
            Do(moves.Add(Edit, Middle(device)), $"There is no free place for {device.Name}, so it stands in the middle", id);
    }

    public void PutBack(GearId id)
    {
        if (Edit.Aside.FirstOrDefault(aside => aside.Id == id) is { } old)
            Do(moves.Add(Edit, old), $"{Name(id)} put back", id);
    }

    public void Remove(GearId id) => TakeOff(id, () => (moves.Remove(Edit, id), $"{Name(id)} removed"));

    public void LayAside(GearId id) => TakeOff(id, () => (moves.LayAside(Edit, id), $"{Name(id)} laid aside"));

    public void ToggleLock(GearId id)
    {
        if (Edit.PlacementOf(id) is not null)
            Do(moves.ToggleLock(Edit, id), Edit.Locks(id) ? $"{Name(id)} unlocked" : $"{Name(id)} locked where it stands", id);
    }

    public void Bring(GearId id) => Do(moves.Bring(Edit, id), $"{Name(id)} comes along", null);

    public void LeaveHome(GearId id) => Do(moves.LeaveHome(Edit, id), $"{Name(id)} stays home", null);

    /// <summary>A whole rig at once, such as the planner's.</summary>
    public void Take(Rig rig, string words) => Do(Edit with { Rig = rig }, words, null);

    public void Undo() => Say(history.Undo(), "Undone");

    public void Redo() => Say(history.Redo(), "Done again");

    /// <summary>Says why a locked thing does not move.</summary>
    public void Refuse(GearId id) => Say($"{Name(id)} is locked. Unlock it first.");

    /// <summary>Says something without changing anything.</summary>
    public void Say(string words)
    {
        Said = words;
        Changed?.Invoke();
    }

    private string Name(GearId id) => Problem.NameOf(id);

    private static bool IsFar(Millimetres at) => at < -FarthestPlace || at > FarthestPlace;

    private (BoardEdit, string)? Turned(GearId id, Turn turn) => (moves.TurnTo(Edit, id, turn), EditWords.Turned(Problem, id, turn));

    private Placement Middle(Device device)
    {
        var (turn, size) = (device.Turns[0], device.Size.Turned(device.Turns[0]));
        return new(device.Id, new(((Problem.Board.Width - size.Width).Value / 2).Mm, ((Problem.Board.Depth - size.Depth).Value / 2).Mm), turn);
    }

    /// <summary>Does it to a thing that stands and is not locked; null for nothing to do.</summary>
    private void Handle(GearId id, Func<Placement, (BoardEdit Next, string Words)?> move, GearId? about = null)
    {
        if (Edit.PlacementOf(id) is { } placement && !Refuses(id) && move(placement) is { } done)
            Do(done.Next, done.Words, about ?? id);
    }

    private void TakeOff(GearId id, Func<(BoardEdit, string)> move)
    {
        if (IsRemovable(id))
            Handle(id, _ => move());
    }

    private bool Refuses(GearId id)
    {
        if (Edit.Locks(id))
            Refuse(id);
        return Edit.Locks(id);
    }

    private void Do(BoardEdit next, string words, GearId? about)
    {
        if (next == Edit)
            return;
        var before = Violations;
        history.Do(next, words);
        Judge();
        Say(EditWords.WithFaults(words, before, Violations, about, Unit));
    }

    private void Say(string? words, string how)
    {
        if (words is null)
            return;
        Judge();
        Say($"{how}: {words}.");
    }

    private void Judge() => (Violations, Score) = (RuleBook.Check(Problem, Rig), Scorer.Score(Problem, Rig));
}
