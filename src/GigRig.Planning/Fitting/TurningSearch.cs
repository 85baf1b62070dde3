namespace GigRig.Planning.Fitting;

/// <summary>
/// Decides whether things can stand together, one way of turning them after another: along the width first, where most is refuted, then with depth, in the order
/// that was found along the width, then in any order.
/// </summary>
internal sealed class TurningSearch(Surface surface)
{
    private const int MostCombinations = 256;

    /// <summary>Beyond so many things the solver is quicker.</summary>
    private const int MostThings = 14;

    /// <summary>Nodes for one order along the width, which either works at once or hardly ever.</summary>
    private const int NodesAnOrder = 150;

    private readonly Dictionary<string, Stance[]> ways = new(StringComparer.Ordinal);

    public Following Following { get; } = new();

    /// <returns>Where they stand; empty: proved that they cannot; null: open.</returns>
    public IReadOnlyList<Standing>? Decide(IReadOnlyList<Shape> shapes, int mostNodes, Clock clock) =>
        Combinations([.. shapes.Select(WaysOf)]) is { } turned ? Decide(shapes, turned, mostNodes, clock) : null;

    /// <param name="ways">The ways of turning them all that are not ruled out.</param>
    public IReadOnlyList<Standing>? Decide(IReadOnlyList<Shape> shapes, IEnumerable<Stance[]> ways, int mostNodes, Clock clock)
    {
        // Distances between foot switches are round, and this search knows only straight ones.
        if (surface.SwitchSpacing > 0 || shapes.Count > MostThings)
            return null;
        var left = mostNodes;
        var open = new List<Stance[]>();
        foreach (var turned in ways)
        {
            IReadOnlyList<Standing>? found = null;
            var word = StripSearch.Decide(surface, turned, Following, left, clock, along =>
            {
                found = FitSearch.Decide(surface, turned, Following, NodesAnOrder, clock, out _, along);
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
            var found = FitSearch.Decide(surface, turned, Following, left, clock, out var used);
            left -= used;
            if (found is { Count: > 0 })
                return Named(shapes, turned, found);
            undecided |= found is null;
        }

        return undecided ? null : [];
    }

    /// <summary>Whether some of the things are too deep to stand behind one another however they are turned.</summary>
    public bool IsRow(IEnumerable<Shape> shapes) => shapes.Any(s => WaysOf(s).All(way => 2 * way.Pose.Depth > surface.Depth));

    /// <summary>Whether things so turned are refuted along the width at the root.</summary>
    public bool Refutes(Stance[] turned, Clock clock) =>
        StripSearch.Decide(surface, turned, Following, 0, clock, _ => true, out _) == StripSearch.Word.No;

    public Stance[] WaysOf(Shape shape)
    {
        if (!ways.TryGetValue(shape.Key, out var known))
            ways[shape.Key] = known = Stance.AllOf(shape, surface);
        return known;
    }

    /// <summary>Turned ones first, as they are more often the shallow ones. Null where there are too many.</summary>
    private static IEnumerable<Stance[]>? Combinations(Stance[][] each)
    {
        var count = each.Aggregate(1L, (product, w) => Math.Min(product * w.Length, MostCombinations + 1));
        return count > MostCombinations ? null : Enumerable.Range(1, (int)count).Select(c => Combination(each, count - c));
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
}
