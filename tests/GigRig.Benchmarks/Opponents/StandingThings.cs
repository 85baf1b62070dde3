using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>A thing turned one way: its body at (0, 0) first, then the space of its plugs, all apart from each other, and where the body's corner may be.</summary>
internal sealed record Pose(Turn Turn, Rect[] Pieces, int FromX, int ToX, Google.OrTools.Util.Domain Fronts)
{
    public bool IsAcross => Turn is Turn.Quarter or Turn.ThreeQuarter;
}

/// <summary>A device, or a supply among the devices, that stands when <paramref name="Present"/> holds.</summary>
internal sealed record StandingThing(GearId Id, BoolVar Present, Pose[] Poses);

/// <summary>All that may stand on the board, with every way it can. What cannot stand at all is never present.</summary>
internal static class StandingThings
{
    public static StandingThing[] Of(Belongings belongings)
    {
        var problem = belongings.Problem;
        var things = belongings.Devices
            .Select(d => new StandingThing(d.Thing.Id, d.Taken, Poses(Outline.Of(d.Thing, problem.Options.Plugs), d.Thing.Turns, problem.Board)))
            .ToList();
        if (problem.Supply is { Mount: SupplyMount.Top, Size: { } size } supply)
            things.Add(new(supply.Id, belongings.Always, Poses(Outline.Of(size), [Turn.None, Turn.Quarter], problem.Board)));
        foreach (var thing in things.Where(t => t.Poses.Length == 0))
            belongings.Model.Add(thing.Present == 0);
        return [.. things.Where(t => t.Poses.Length > 0)];
    }

    public static IReadOnlyList<Rect> KeepOuts(Belongings belongings) => ApartPieces.Of(belongings.Problem.Board.KeepOuts);

    private static Pose[] Poses(Outline outline, ValueList<Turn> turns, Board board)
    {
        // Cut before turning, so that every pose has the same pieces in the same order.
        var apart = outline with { Plugs = ApartPieces.Of(outline.Plugs).ToValueList() };
        return [.. turns.Order().Select(turn => PoseOf(apart, turn, board)).OfType<Pose>()];
    }

    private static Pose? PoseOf(Outline outline, Turn turn, Board board)
    {
        var (body, plugs) = outline.Placed(new Placement(default, default, turn));
        Rect[] pieces = [body, .. plugs];
        var fromX = Math.Max(0, pieces.Max(p => -board.Overhang.Left.Value - p.X.Value));
        var toX = Math.Min((board.Width - body.Width).Value, pieces.Min(p => (board.Width + board.Overhang.Right - p.Right).Value));
        var fromY = pieces.Max(p => -board.Overhang.Front.Value - p.Y.Value);
        var toY = pieces.Min(p => (board.Depth + board.Overhang.Rear - p.Rear).Value);
        var fronts = RailSpans.Fronts(board, body.Depth.Value).Where(y => fromY <= y && y <= toY).Select(y => (long)y).ToArray();
        return fromX > toX || fronts.Length == 0 ? null : new(turn, pieces, fromX, toX, Google.OrTools.Util.Domain.FromValues(fronts));
    }
}
