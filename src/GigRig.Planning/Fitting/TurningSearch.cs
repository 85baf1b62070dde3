namespace GigRig.Planning.Fitting;

/// <summary>
/// Decides whether things can stand together, one way of turning them after another: along the width first, where most is refuted, then with depth, in the order
/// that was found along the width, then in any order.
/// </summary>
internal sealed class TurningSearch(Surface surface)
{
    private const int MostCombinations = 256;

    /// <summary>Beyond so many things the solver is quicker with what a strip leaves open.</summary>
    private const int MostThings = 14;

    /// <summary>What a strip is given first, and how many times more with each further try: one way of looking often says at once what the other says late.</summary>
    private const int FirstNodes = 2000;
    private const int TimesMore = 8;

    /// <summary>What a question takes at least, in nodes along the width, roughly.</summary>
    private const int WorkAQuestion = 100;

    private readonly Surface across = surface.Across();
    private readonly DepthSearch depth = new(surface);
    private readonly Dictionary<Stance, Stance> overs = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, Stance[]> ways = new(StringComparer.Ordinal);
    private long work;

    public Following Following => depth.Following;

    /// <summary>How much was done so far, in nodes along the width.</summary>
    public long Work => work + depth.Work;

    /// <param name="stripNodes">How many nodes may be looked at along the width and across.</param>
    /// <param name="fitNodes">How many with depth.</param>
    /// <returns>Where they stand; empty: proved that they cannot; null: open.</returns>
    public IReadOnlyList<Standing>? Decide(IReadOnlyList<Shape> shapes, int stripNodes, int fitNodes, Clock clock)
    {
        if (surface.SwitchSpacing > 0 || shapes.Count > StripSearch.MostThings)
            return null;
        Stance[][] each = [.. shapes.Select(WaysOf)];
        if (Combinations(each) is { } all)
            return Decide(shapes, all, stripNodes, fitNodes, clock);
        return new Turnings(surface, turned => IsRefuted(turned, clock)).Of(each) is { } left
            ? Decide(shapes, left, TimesMore * stripNodes, fitNodes, clock)
            : null;
    }

    /// <param name="ways">The ways of turning them all that are not ruled out.</param>
    public IReadOnlyList<Standing>? Decide(IReadOnlyList<Shape> shapes, IEnumerable<Stance[]> ways, int stripNodes, int fitNodes, Clock clock)
    {
        // Distances between foot switches are round, and this search knows only straight ones.
        if (surface.SwitchSpacing > 0 || shapes.Count > StripSearch.MostThings)
            return null;
        var left = stripNodes;
        work += WorkAQuestion;
        var open = new List<(Stance[] Turned, int[]? Refused)>();
        foreach (var turned in ways)
        {
            IReadOnlyList<Standing>? found = null;
            int[]? refused = null;
            var word = LookAlongAndAcross(turned, ref left, clock, along =>
            {
                found = depth.InOrder(turned, refused = along, clock);
                return found is { Count: > 0 };
            });
            if (word == StripSearch.Word.Yes)
                return Named(shapes, turned, found!);
            if (word == StripSearch.Word.Open)
                open.Add((turned, refused));
        }

        if (shapes.Count > MostThings && open.Count > 0)
            return null;
        left = open.Any(one => depth.IsMostlyRow(one.Turned)) ? DepthSearch.NodesInParts * fitNodes : fitNodes;
        var undecided = false;
        foreach (var (turned, refused) in open)
        {
            var standings = depth.Decide(turned, refused, ref left, clock);
            if (standings is { Count: > 0 })
                return Named(shapes, turned, standings);
            undecided |= standings is null;
        }

        return undecided ? null : [];
    }

    /// <summary>Whether some of the things are too deep to stand behind one another however they are turned.</summary>
    public bool IsRow(IEnumerable<Shape> shapes) => shapes.Any(s => WaysOf(s).All(way => 2 * way.Pose.Depth > surface.Depth));

    /// <summary>Whether things so turned are refuted along the width at the root.</summary>
    public bool Refutes(Stance[] turned, Clock clock) =>
        StripSearch.Decide(surface, turned, Following, 0, clock, _ => true, out _) == StripSearch.Word.No;

    private bool IsRefuted(Stance[] turned, Clock clock)
    {
        work += WorkAQuestion / 10;
        return Refutes(turned, clock) || StripSearch.Decide(across, [.. turned.Select(OverOf)], Following, 0, clock, _ => true, out _) == StripSearch.Word.No;
    }

    /// <summary>Along the width, where places found are tried out, and across, where nothing but a no counts.</summary>
    private StripSearch.Word LookAlongAndAcross(Stance[] turned, ref int left, Clock clock, Func<int[], bool> accept)
    {
        // A row says all along the width.
        var isMostlyRow = depth.IsMostlyRow(turned);
        var (isAlongDone, isAcrossDone) = (false, isMostlyRow);
        for (var nodes = isMostlyRow ? left : FirstNodes; ; nodes *= TimesMore)
        {
            nodes = Math.Min(nodes, left);
            if (!isAlongDone)
            {
                var word = StripSearch.Decide(surface, turned, Following, nodes, clock, accept, out var used, isMostlyRow ? DepthSearch.MostRefused : int.MaxValue);
                left -= used;
                work += used;
                isAlongDone = used <= nodes;
                if (word != StripSearch.Word.Open)
                    return word;
            }

            if (!isAcrossDone && left > 0)
            {
                var word = StripSearch.Decide(across, [.. turned.Select(OverOf)], Following, nodes, clock, _ => true, out var used);
                left -= used;
                work += used;
                isAcrossDone = used <= nodes;
                if (word == StripSearch.Word.No)
                    return word;
            }

            if ((isAlongDone && isAcrossDone) || left <= 0 || clock.IsUp)
                return StripSearch.Word.Open;
        }
    }

    private Stance OverOf(Stance stance)
    {
        if (!overs.TryGetValue(stance, out var over))
            overs[stance] = over = Stance.Of(stance.Pose.Across(), across)!;
        return over;
    }

    public Stance[] WaysOf(Shape shape)
    {
        if (!ways.TryGetValue(shape.Key, out var known))
            ways[shape.Key] = known = Stance.AllOf(shape, surface);
        return known;
    }

    /// <summary>A thing that may stand in these of its ways only.</summary>
    public Shape Narrowed(Stance[] some)
    {
        var shape = new Shape([.. some.Select(way => way.Pose)]);
        ways.TryAdd(shape.Key, some);
        return shape;
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
