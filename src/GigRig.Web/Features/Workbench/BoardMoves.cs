using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Workbench;

/// <summary>
/// What hands can do to a rig, each move from one state to the next. A move may break rules: they are shown, not forbidden. The audio order and the
/// hook-up follow what comes and goes.
/// </summary>
public sealed class BoardMoves(RigProblem problem, HookUps hookUps)
{
    private static readonly Turn[] SupplyTurns = [Turn.None, Turn.Quarter];

    public BoardEdit Move(BoardEdit edit, GearId id, Point to) => edit.Standing(Placed(edit, id) with { At = to });

    /// <summary>About its middle, so that turning four times leaves it where it was.</summary>
    public BoardEdit TurnTo(BoardEdit edit, GearId id, Turn turn)
    {
        var old = Placed(edit, id);
        var (before, after) = (SizeOf(id).Turned(old.Turn), SizeOf(id).Turned(turn));
        return edit.Standing(new(id, new(old.At.X + Half(before.Width - after.Width), old.At.Y + Half(before.Depth - after.Depth)), turn));
    }

    /// <summary>The next way it may stand, clockwise.</summary>
    public Turn NextTurn(BoardEdit edit, GearId id)
    {
        var turns = TurnsOf(id).Order().ToList();
        var now = Placed(edit, id).Turn;
        return turns.FirstOrDefault(turn => turn > now, turns[0]);
    }

    public IReadOnlyList<Turn> TurnsOf(GearId id) => problem.FindDevice(id) is { } device ? [.. device.Turns] : SupplyTurns;

    /// <summary>Each stands with its front and its middle where the other's were.</summary>
    public BoardEdit Swap(BoardEdit edit, GearId one, GearId other)
    {
        var (a, b) = (Placed(edit, one), Placed(edit, other));
        return edit.Standing(a with { At = InPlaceOf(b, WidthOf(a)) }).Standing(b with { At = InPlaceOf(a, WidthOf(b)) });
    }

    /// <summary>Puts a device from the shelf where another stood, which goes back to the shelf.</summary>
    public BoardEdit Replace(BoardEdit edit, GearId gone, GearId come)
    {
        var old = Placed(edit, gone);
        var turn = TurnsOf(come).Contains(old.Turn) ? old.Turn : TurnsOf(come)[0];
        var standing = new Placement(come, default, turn);
        return Add(Remove(edit, gone), standing with { At = InPlaceOf(old, WidthOf(standing)) });
    }

    public BoardEdit Add(BoardEdit edit, Placement placement)
    {
        var rig = edit.Rig with { Placements = [.. edit.Rig.Placements, placement] };
        rig = rig with { Chain = ChainOrders.With(problem, rig, placement.Id) };
        return edit with { Rig = hookUps.Mended(rig), Aside = Without(edit.Aside, placement.Id) };
    }

    /// <summary>Back to the shelf.</summary>
    public BoardEdit Remove(BoardEdit edit, GearId id)
    {
        var rig = edit.Rig with
        {
            Placements = Without(edit.Rig.Placements, id),
            HookUp = edit.Rig.HookUp.Where(feed => feed.Device != id).ToValueList(),
            Chain = ChainOrders.Without(edit.Rig.Chain, id),
        };
        return edit with { Rig = hookUps.Mended(rig), Locked = edit.Locked.Where(locked => locked != id).ToValueList() };
    }

    /// <summary>Off the board for now; it can be put back where it stood.</summary>
    public BoardEdit LayAside(BoardEdit edit, GearId id)
    {
        var old = Placed(edit, id);
        var without = Remove(edit, id);
        return without with { Aside = [old, .. Without(without.Aside, id)] };
    }

    public BoardEdit ToggleLock(BoardEdit edit, GearId id) => edit with
    {
        Locked = edit.Locks(id) ? edit.Locked.Where(locked => locked != id).ToValueList() : [.. edit.Locked, id],
    };

    /// <summary>An off-board thing comes along.</summary>
    public BoardEdit Bring(BoardEdit edit, GearId id) => edit with { Rig = edit.Rig with { OffBoard = [.. edit.Rig.OffBoard.Where(other => other != id), id] } };

    public BoardEdit LeaveHome(BoardEdit edit, GearId id) => edit with { Rig = edit.Rig with { OffBoard = edit.Rig.OffBoard.Where(other => other != id).ToValueList() } };

    private static Placement Placed(BoardEdit edit, GearId id) =>
        edit.PlacementOf(id) ?? throw new InvalidOperationException($"{id} does not stand on the board.");

    private static ValueList<Placement> Without(ValueList<Placement> placements, GearId id) => placements.Where(placement => placement.Id != id).ToValueList();

    // Rounds towards zero either way, so that there and back is nowhere.
    private static Millimetres Half(Millimetres length) => (length.Value / 2).Mm;

    private Point InPlaceOf(Placement old, Millimetres width) => new(old.At.X + Half(WidthOf(old) - width), old.At.Y);

    private Millimetres WidthOf(Placement placement) => SizeOf(placement.Id).Turned(placement.Turn).Width;

    private BodySize SizeOf(GearId id) => problem.FindDevice(id)?.Size ?? (id == problem.Supply?.Id ? problem.Supply?.Size : null) ?? default;
}
