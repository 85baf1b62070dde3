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

    /// <summary>Nodes for one order along the width, which either works at once or hardly ever.</summary>
    private const int NodesAnOrder = 150;

    /// <summary>Nodes for any order, before things are looked at nearer to the front and nearer to the rear; and how many times the nodes of a question all of that may take.</summary>
    private const int NodesAHalf = 30;
    private const int NodesInHalves = 3;

    /// <summary>After so many places along the width in vain something is halved once more.</summary>
    private const int MostRefused = 24;

    /// <summary>What a strip is given first, and how many times more with each further try: one way of looking often says at once what the other says late.</summary>
    private const int FirstNodes = 2000;
    private const int TimesMore = 8;

    /// <summary>What a question, and a node with depth, take at least in nodes along the width, roughly.</summary>
    private const int WorkAQuestion = 100;
    private const int WorkAFitNode = 10;

    private readonly Surface across = surface.Across();
    private readonly Dictionary<Stance, Stance> overs = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, Stance[]> ways = new(StringComparer.Ordinal);

    public Following Following { get; } = new();

    /// <summary>How much was done so far, in nodes along the width.</summary>
    public long Work { get; private set; }

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
        Work += WorkAQuestion;
        var open = new List<(Stance[] Turned, int[]? Refused)>();
        foreach (var turned in ways)
        {
            IReadOnlyList<Standing>? found = null;
            int[]? refused = null;
            var word = LookAlongAndAcross(turned, ref left, clock, along =>
            {
                found = FitSearch.Decide(surface, turned, Following, NodesAnOrder, clock, out var used, refused = along);
                Work += (long)WorkAFitNode * used;
                return found is { Count: > 0 };
            });
            if (word == StripSearch.Word.Yes)
                return Named(shapes, turned, found!);
            if (word == StripSearch.Word.Open)
                open.Add((turned, refused));
        }

        if (shapes.Count > MostThings && open.Count > 0)
            return null;
        left = open.Any(one => IsMostlyRow(one.Turned)) ? NodesInHalves * fitNodes : fitNodes;
        var undecided = false;
        foreach (var (turned, refused) in open)
        {
            var standings = IsMostlyRow(turned) ? InHalves(turned, refused, ref left, clock) : InAnyOrder(turned, left, ref left, clock);
            if (standings is { Count: > 0 })
                return Named(shapes, turned, standings);
            undecided |= standings is null;
        }

        return undecided ? null : [];
    }

    /// <summary>Whether most of them stand in one row.</summary>
    private bool IsMostlyRow(Stance[] turned) => 2 * turned.Count(way => 2 * way.Pose.Depth > surface.Depth) > turned.Length;

    private IReadOnlyList<Standing>? InAnyOrder(Stance[] turned, int nodes, ref int left, Clock clock)
    {
        var found = FitSearch.Decide(surface, turned, Following, Math.Min(nodes, left), clock, out var used);
        left -= used;
        Work += (long)WorkAFitNode * used;
        return found;
    }

    /// <summary>
    /// Something stands in the front half of its room between front and rear, or in the rear half: then distances along the width are longer. Best something that would
    /// have stood behind or in front of another where it did not work out.
    /// </summary>
    private IReadOnlyList<Standing>? InHalves(Stance[] turned, int[]? refused, ref int left, Clock clock)
    {
        var found = InAnyOrder(turned, NodesAHalf, ref left, clock);
        if (found is not null || left <= 0 || clock.IsUp)
            return found;
        var one = Enumerable.Range(0, turned.Length).Where(IsTorn).DefaultIfEmpty(-1).MaxBy(Room);
        if (one < 0 || Room(one) == 0)
            one = Enumerable.Range(0, turned.Length).MaxBy(Room);
        if (Room(one) == 0)
            return InAnyOrder(turned, left, ref left, clock);
        var undecided = false;
        foreach (var half in new[] { turned[one].Halves.Front, turned[one].Halves.Rear })
        {
            Stance[] halved = [.. turned.Select((way, i) => i == one ? half : way)];
            IReadOnlyList<Standing>? standings = null;
            int[]? places = null;
            var word = StripSearch.Decide(surface, halved, Following, left, clock, along =>
            {
                standings = FitSearch.Decide(surface, halved, Following, NodesAnOrder, clock, out _, places = along);
                return standings is { Count: > 0 };
            }, out var used, MostRefused);
            left -= used;
            Work += used;
            if (word == StripSearch.Word.Open)
                standings = InHalves(halved, places, ref left, clock);
            if (word != StripSearch.Word.No && standings is { Count: > 0 })
                return standings;
            undecided |= word != StripSearch.Word.No && standings is null;
        }

        return undecided ? null : [];

        int Room(int i) => i < 0 ? -1 : turned[i].LastY - turned[i].FirstY;
        bool IsTorn(int i) => refused is not null && Enumerable.Range(0, turned.Length)
            .Any(j => j != i && refused[i] < refused[j] + turned[j].Pose.Width && refused[j] < refused[i] + turned[i].Pose.Width);
    }

    /// <summary>Whether some of the things are too deep to stand behind one another however they are turned.</summary>
    public bool IsRow(IEnumerable<Shape> shapes) => shapes.Any(s => WaysOf(s).All(way => 2 * way.Pose.Depth > surface.Depth));

    /// <summary>Whether things so turned are refuted along the width at the root.</summary>
    public bool Refutes(Stance[] turned, Clock clock) =>
        StripSearch.Decide(surface, turned, Following, 0, clock, _ => true, out _) == StripSearch.Word.No;

    private bool IsRefuted(Stance[] turned, Clock clock)
    {
        Work += WorkAQuestion / 10;
        return Refutes(turned, clock) || StripSearch.Decide(across, [.. turned.Select(OverOf)], Following, 0, clock, _ => true, out _) == StripSearch.Word.No;
    }

    /// <summary>Along the width, where places found are tried out, and across, where nothing but a no counts.</summary>
    private StripSearch.Word LookAlongAndAcross(Stance[] turned, ref int left, Clock clock, Func<int[], bool> accept)
    {
        // A row says all along the width.
        var isMostlyRow = IsMostlyRow(turned);
        var (isAlongDone, isAcrossDone) = (false, isMostlyRow);
        for (var nodes = isMostlyRow ? left : FirstNodes; ; nodes *= TimesMore)
        {
            nodes = Math.Min(nodes, left);
            if (!isAlongDone)
            {
                var word = StripSearch.Decide(surface, turned, Following, nodes, clock, accept, out var used, isMostlyRow ? MostRefused : int.MaxValue);
                left -= used;
                Work += used;
                isAlongDone = used <= nodes;
                if (word != StripSearch.Word.Open)
                    return word;
            }

            if (!isAcrossDone && left > 0)
            {
                var word = StripSearch.Decide(across, [.. turned.Select(OverOf)], Following, nodes, clock, _ => true, out var used);
                left -= used;
                Work += used;
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
