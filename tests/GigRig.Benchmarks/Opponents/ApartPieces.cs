using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Benchmarks.Opponents;

/// <summary>
/// The same area as upright rectangles that do not overlap: plugs of one device may overlap each other, and keep-outs may,
/// but one no-overlap constraint knows no exceptions.
/// </summary>
internal static class ApartPieces
{
    public static IReadOnlyList<Rect> Of(IReadOnlyList<Rect> rects)
    {
        if (!rects.Index().Any(a => rects.Skip(a.Index + 1).Any(a.Item.Overlaps)))
            return rects;
        // In upright strips between neighbouring edges the covered spans do not change; equal neighbours become one piece.
        var edges = rects.SelectMany(r => new[] { r.X.Value, r.Right.Value }).Distinct().Order().ToArray();
        var pieces = new List<Rect>();
        List<(int From, int To)> open = [];
        var since = edges[0];
        foreach (var edge in edges)
        {
            var spans = Merged(rects.Where(r => r.X.Value <= edge && edge < r.Right.Value));
            if (open.SequenceEqual(spans))
                continue;
            pieces.AddRange(open.Select(s => new Rect(since.Mm, s.From.Mm, (edge - since).Mm, (s.To - s.From).Mm)));
            (open, since) = (spans, edge);
        }

        return pieces;
    }

    /// <summary>What the rectangles cover along y, ascending and apart.</summary>
    private static List<(int From, int To)> Merged(IEnumerable<Rect> rects)
    {
        var spans = new List<(int From, int To)>();
        foreach (var (from, to) in rects.Select(r => (r.Y.Value, r.Rear.Value)).Order())
        {
            if (spans.Count > 0 && from <= spans[^1].To)
                spans[^1] = (spans[^1].From, Math.Max(spans[^1].To, to));
            else
                spans.Add((from, to));
        }

        return spans;
    }
}
