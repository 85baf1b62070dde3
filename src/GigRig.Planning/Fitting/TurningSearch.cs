namespace GigRig.Planning.Fitting;

/// <summary>
/// Decides whether things can stand together, one way of turning them after another: along the width first, where most is refuted, then with depth, in the order
/// that was found along the width, then in any order.
/// </summary>
internal sealed class TurningSearch(Surface surface)
{
    private const int MostCombinations = 256;

    /// <summary>Nodes for one order along the width, which either works at once or hardly ever.</summary>
    private const int NodesAnOrder = 150;

    private readonly Dictionary<string, Stance[]> ways = new(StringComparer.Ordinal);
    private readonly Following following = new();

    /// <returns>Where they stand; empty: proved that they cannot; null: open.</returns>
    public IReadOnlyList<Standing>? Decide(IReadOnlyList<Shape> shapes, int mostNodes, Clock clock)
    {
        var each = shapes.Select(WaysOf).ToArray();
        var count = each.Aggregate(1L, (product, w) => Math.Min(product * w.Length, MostCombinations + 1));

        // Distances between foot switches are round, and this search knows only straight ones.
        if (surface.SwitchSpacing > 0 || count > MostCombinations)
            return null;
        var left = mostNodes;
        var open = new List<Stance[]>();
        for (var combination = 0L; combination < count; combination++)
        {
            var turned = Combination(each, count - 1 - combination);
            IReadOnlyList<Standing>? found = null;
            var word = StripSearch.Decide(surface, turned, following, left, clock, along =>
            {
                found = FitSearch.Decide(surface, turned, following, NodesAnOrder, clock, out _, along);
                return found is { Count: > 0 };
            }, out var used);
            left -= used;
            if (word == StripSearch.Word.Yes)
                return Named(shapes, turned, found!);
            if (word == StripSearch.Word.Open)
                open.Add(turned);
        }

        left = mostNodes;
        var undecided = false;
        foreach (var turned in open)
        {
            var found = FitSearch.Decide(surface, turned, following, left, clock, out var used);
            left -= used;
            if (found is { Count: > 0 })
                return Named(shapes, turned, found);
            undecided |= found is null;
        }

        return undecided ? null : [];
    }

    private static Stance[] Combination(Stance[][] each, long number)
    {
        var turned = new Stance[each.Length];
        for (var i = 0; i < each.Length; i++)
        {
            turned[i] = each[i][number % each[i].Length];
            number /= each[i].Length;
        }

        return turned;
    }

    private static IReadOnlyList<Standing> Named(IReadOnlyList<Shape> shapes, Stance[] turned, IReadOnlyList<Standing> standings) =>
        [.. standings.Select(s => s with { Pose = shapes[s.Item].PoseLike(turned[s.Item].Pose) })];

    private Stance[] WaysOf(Shape shape)
    {
        if (!ways.TryGetValue(shape.Key, out var known))
            ways[shape.Key] = known = Stance.AllOf(shape, surface);
        return known;
    }
}
