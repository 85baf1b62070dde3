namespace GigRig.Planning.Fitting;

/// <summary>
/// Answers whether things can stand together: what it already knows, then a quick placer, then a proof either way.
/// A no comes with a misfit set that was made smaller one thing at a time.
/// </summary>
internal sealed class Fitter(Surface surface, PlannerOptions options)
{
    /// <summary>How many times fewer nodes our own search has where there is no row and more than a few things.</summary>
    private const int NodesFewer = 4;
    private const int Few = 10;

    /// <summary>What a second of the solver's, and standing one thing quickly, are in nodes along the width, roughly.</summary>
    private const long SolversSecond = 1_000_000;
    private const int QuickStand = 50;

    private readonly QuickFit quick = new(surface, options.Seed);
    private readonly Rows rows = new(surface);
    private readonly TurningSearch turning = new(surface);
    private readonly ExactFit exact = new(surface, options.Seed, options.ConfirmBudget);
    private readonly Dictionary<string, IReadOnlyList<(Shape Shape, Standing Standing)>> stands = new(StringComparer.Ordinal);
    private readonly HashSet<string> never = new(StringComparer.Ordinal);

    /// <summary>What was left open, and with how much work for the solver.</summary>
    private readonly Dictionary<string, TimeSpan> open = new(StringComparer.Ordinal);

    /// <summary>What was left open at a glance, and with how many times fewer nodes.</summary>
    private readonly Dictionary<string, int> glanced = new(StringComparer.Ordinal);

    private long othersWork;

    public Surface Surface => surface;

    public QuickFit Quick => quick;

    public Rows Rows => rows;

    public TurningSearch Turning => turning;

    /// <summary>How much was done so far, in nodes along the width: a count, not a time.</summary>
    public long Work => turning.Work + othersWork;

    /// <summary>Where they can stand; an empty list, for things that are not none, is a proved no; null is open.</summary>
    /// <param name="turned">The ways of turning them all that are not ruled out; null where that was not looked into.</param>
    /// <param name="fewer">So many times fewer nodes than there are for a question, and then neither the quick placer nor the solver; 1 for all there is.</param>
    public IReadOnlyList<Standing>? Stand(IReadOnlyList<Shape> shapes, IReadOnlyList<Stance[]>? turned, Clock clock, int fewer) =>
        Decide(shapes, clock, options.FitBudget, options.QuickTries, turned, fewer);

    public FitAnswer Fit(IReadOnlyList<Shape> shapes, Clock clock)
    {
        var standings = Decide(shapes, clock, options.FitBudget, options.QuickTries);
        if (standings is null)
            return new FitAnswer.Open();
        return standings.Count == shapes.Count
            ? new FitAnswer.Stands(standings)
            : Shrunk(shapes, clock);
    }

    /// <summary>Null: open. Empty for a non-empty set: proved no.</summary>
    private IReadOnlyList<Standing>? Decide(IReadOnlyList<Shape> shapes, Clock clock, TimeSpan budget, int tries, IReadOnlyList<Stance[]>? turned = null, int fewer = 1)
    {
        if (shapes.Count == 0)
            return [];
        var key = KeyOf(shapes);
        if (stands.TryGetValue(key, out var known))
            return Matched(shapes, known);
        if (never.Contains(key) || options.Memory?.Misfits.Contains($"{surface.Key}: {key}") == true)
            return [];
        if (open.TryGetValue(key, out var spent) && budget <= spent)
            return null;
        if (fewer > 1 && glanced.TryGetValue(key, out var before) && before <= fewer)
            return null;
        var standings = turned is null && !rows.Admits(shapes) ? [] : Prove(shapes, turned, tries, clock, budget, fewer);
        if (standings is { Count: > 0 })
            stands[key] = [.. standings.Select(s => (shapes[s.Item], s))];
        else if (standings is not null)
            NeverAgain(key);
        else if (fewer > 1)
            glanced[key] = fewer;
        else if (!clock.IsUp)
            open[key] = budget;
        return standings;
    }

    /// <summary>Our own search settles nearly everything where there is a row, or few things. What it leaves open goes to the quick placer and the solver.</summary>
    private IReadOnlyList<Standing>? Prove(IReadOnlyList<Shape> shapes, IReadOnlyList<Stance[]>? turned, int tries, Clock clock, TimeSpan budget, int fewer)
    {
        var alongNodes = options.FitNodes / fewer;
        var nodes = shapes.Count <= Few || turning.IsRow(shapes) ? alongNodes : alongNodes / NodesFewer;
        var standings = turned is null ? turning.Decide(shapes, alongNodes, nodes, clock) : turning.Decide(shapes, turned, alongNodes, nodes, clock);
        return standings is not null || fewer > 1 ? standings : Place(shapes, tries, clock) ?? Solve(shapes, clock, budget);
    }

    private IReadOnlyList<Standing>? Solve(IReadOnlyList<Shape> shapes, Clock clock, TimeSpan budget)
    {
        var before = exact.Work;
        var standings = exact.Decide(shapes, clock, budget);
        othersWork += (long)(SolversSecond * (exact.Work - before).TotalSeconds);
        return standings;
    }

    private IReadOnlyList<Standing>? Place(IReadOnlyList<Shape> shapes, int tries, Clock clock)
    {
        var layout = quick.Best(shapes, tries, clock.Cancel);
        othersWork += (long)QuickStand * tries * shapes.Count;
        return layout.Standings.Count == shapes.Count ? [.. layout.Standings.OrderBy(s => s.Item)] : null;
    }

    /// <summary>Small things are tried for leaving out first: the large ones that stay say most about other sets.</summary>
    private FitAnswer.Misfit Shrunk(IReadOnlyList<Shape> shapes, Clock clock)
    {
        var kept = Enumerable.Range(0, shapes.Count).ToList();
        var byRow = rows.Excess(shapes);
        foreach (var item in Enumerable.Range(0, shapes.Count).OrderBy(i => shapes[i].BodyArea).ThenBy(i => i))
        {
            if (clock.IsUp)
                break;
            var without = kept.Where(i => i != item).ToList();
            if (without.Count == 0)
                break;
            Shape[] rest = [.. without.Select(i => shapes[i])];
            var stillTooLong = rows.Excess(rest);

            // What a row proves is left to rows: it is quick, and the proof carries over to other things.
            if (stillTooLong is null && (byRow is not null || Decide(rest, clock, options.ShrinkBudget, options.QuickTries / 3) is not { Count: 0 }))
                continue;
            kept = without;
            byRow = stillTooLong;
        }

        return new(kept, byRow);
    }

    private void NeverAgain(string key)
    {
        never.Add(key);
        options.Memory?.Misfits.Add($"{surface.Key}: {key}");
    }

    private static string KeyOf(IReadOnlyList<Shape> shapes) => string.Join(" + ", shapes.Select(s => s.Key).Order(StringComparer.Ordinal));

    /// <summary>A layout known for things of the same shapes, handed to these.</summary>
    private static IReadOnlyList<Standing> Matched(IReadOnlyList<Shape> shapes, IReadOnlyList<(Shape Shape, Standing Standing)> known)
    {
        var free = known.ToLookup(k => k.Shape.Key).ToDictionary(g => g.Key, g => new Queue<(Shape Shape, Standing Standing)>(g), StringComparer.Ordinal);
        return [.. shapes.Select((shape, i) =>
        {
            var (like, standing) = free[shape.Key].Dequeue();
            return standing with { Item = i, Pose = shape.PoseLike(like.Poses[standing.Pose]) };
        })];
    }
}
