using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>Lists where one thing may stand by itself on the board of a problem.</summary>
internal sealed class StandingList
{
    private readonly Board board;
    private readonly int left;
    private readonly int front;
    private readonly int across;
    private readonly int back;
    private readonly Cells keepOut;

    public StandingList(RigProblem problem)
    {
        board = problem.Board;
        left = board.Overhang.Left.Value;
        front = board.Overhang.Front.Value;
        across = left + board.Width.Value + board.Overhang.Right.Value;
        back = front + board.Depth.Value + board.Overhang.Rear.Value;
        keepOut = Cover(board.KeepOuts.SelectMany(k => Body(k.X.Value, k.Y.Value, k.Width.Value, k.Depth.Value)))!;
    }

    public OneStanding[] Of(GearId id, Millimetres height, Footprint footprint, ValueList<Turn> turns)
    {
        if (height > board.ClearanceOver)
            return [];
        var standings = new List<OneStanding>();
        foreach (var turn in turns)
        {
            var turned = footprint.Turned(turn);
            for (var x = 0; x + turned.Width <= board.Width.Value; x++)
                for (var y = 0; y + turned.Depth <= board.Depth.Value; y++)
                    if (IsFirm(y, turned.Depth) && Cover(Body(x, y, turned.Width, turned.Depth).Concat(turned.Plugs.Select(c => (c.X + x, c.Y + y)))) is { } taken && !taken.Meets(keepOut))
                        standings.Add(new(new(id, new(x.Mm, y.Mm), turn), taken, [.. turned.Switches.Select(s => (s.X + x, s.Y + y))]));
        }

        return [.. standings];
    }

    /// <summary>Whole on one rail; or on two or more, each with 10 mm or all of it, and its middle not beyond them.</summary>
    private bool IsFirm(int y, int depth)
    {
        var rails = board.Rails.Select(rail => (From: rail.From.Value, To: rail.To.Value)).ToList();
        if (rails.Count == 0 || rails.Any(rail => rail.From <= y && y + depth <= rail.To))
            return true;
        var bearing = rails.Where(rail => Enumerable.Range(y, depth).Count(line => rail.From <= line && line < rail.To) >= Math.Min(10, rail.To - rail.From)).ToList();
        var middle = y + depth / 2.0;
        return bearing.Count >= 2 && bearing.Min(rail => rail.From) <= middle && middle <= bearing.Max(rail => rail.To);
    }

    /// <summary>Null where some of it lies outside the board and its overhang.</summary>
    private Cells? Cover(IEnumerable<(int X, int Y)> cells)
    {
        var cover = new Cells(across * back);
        foreach (var (x, y) in cells)
        {
            if (x < -left || y < -front || x >= across - left || y >= back - front)
                return null;
            cover.Add((y + front) * across + x + left);
        }

        return cover;
    }

    private static IEnumerable<(int X, int Y)> Body(int x, int y, int width, int depth) =>
        from column in Enumerable.Range(x, width)
        from row in Enumerable.Range(y, depth)
        select (column, row);
}
