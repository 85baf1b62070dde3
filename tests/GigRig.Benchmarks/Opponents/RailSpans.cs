using GigRig.Domain.Gear;

namespace GigRig.Benchmarks.Opponents;

/// <summary>Where the front edge of a body may lie so that it does not rock; see <c>docs/rules.md</c>, rails.</summary>
internal static class RailSpans
{
    private const int LeastBearing = 10;

    /// <summary>Every position from 0 to the last at which the body is still on the board.</summary>
    public static IEnumerable<int> Fronts(Board board, int depth) =>
        Enumerable.Range(0, Math.Max(0, board.Depth.Value - depth + 1)).Where(y => Stands(board, y, y + depth));

    private static bool Stands(Board board, int front, int rear)
    {
        if (board.Rails.Count == 0 || board.Rails.Any(r => r.From.Value <= front && rear <= r.To.Value))
            return true;
        var bearing = board.Rails
            .Select(r => (From: Math.Max(front, r.From.Value), To: Math.Min(rear, r.To.Value), Least: Math.Min(LeastBearing, r.To.Value - r.From.Value)))
            .Where(b => b.To - b.From >= b.Least)
            .ToList();
        return bearing.Count >= 2 && 2 * bearing.Min(b => b.From) <= front + rear && front + rear <= 2 * bearing.Max(b => b.To);
    }
}
