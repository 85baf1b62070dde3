using GigRig.Planning.Fitting;

namespace GigRig.Planning.Choosing;

/// <summary>
/// What any layout must satisfy, without a layout: dual feasible functions on the body measures (Fekete and Schepers 2004), plain area first.
/// </summary>
internal static class AreaBounds
{
    private const int MostThresholds = 8;

    public static IEnumerable<Bound> Of(Question question)
    {
        var surface = question.Surface;
        var shapes = question.Candidates.Select(c => c.Shape).ToArray();
        var keepOut = Box.Disjoint(surface.KeepOuts).Sum(k => (long)k.Width * k.Depth);
        long board = (long)surface.Width * surface.Depth;
        yield return new([.. shapes.Select(s => (long)s.BodyArea)], board - keepOut - (question.SupplyShape?.BodyArea ?? 0));
        var depths = Thresholds(shapes.SelectMany(s => s.Poses).Select(p => p.Depth), surface.Depth);
        var widths = Thresholds(shapes.SelectMany(s => s.Poses).Select(p => p.Width), surface.Width);
        foreach (var d in depths.Prepend(0))
        {
            foreach (var w in widths.Prepend(0))
            {
                if (d == 0 && w == 0)
                    continue;
                yield return new([.. shapes.Select(Weight)], board - (question.SupplyShape is { } supply ? Weight(supply) : 0));

                long Weight(Shape shape) => shape.Poses.Min(p => Rounded(p.Width, surface.Width, w) * Rounded(p.Depth, surface.Depth, d));
            }
        }
    }

    /// <summary>The dual feasible function with threshold t: large counts as all, small as nothing.</summary>
    private static long Rounded(int size, int whole, int threshold) =>
        size > whole - threshold ? whole : size < threshold ? 0 : size;

    private static IEnumerable<int> Thresholds(IEnumerable<int> sizes, int whole) =>
        sizes.SelectMany(s => new[] { s, whole - s + 1 }).Where(t => t >= 1 && 2 * t <= whole).CountBy(t => t)
            .OrderByDescending(t => t.Value).ThenBy(t => t.Key).Select(t => t.Key).Take(MostThresholds).Append(whole / 2).Distinct().Where(t => t > 0);
}
