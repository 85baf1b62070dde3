namespace GigRig.Planning.Fitting;

/// <summary>
/// Answers whether things can stand together: what it already knows, then a quick placer, then a proof either way.
/// A no comes with a misfit set that was made smaller one thing at a time.
/// </summary>
internal sealed class Fitter(Surface surface, PlannerOptions options)
{
    private readonly QuickFit quick = new(surface, options.Seed);
    private readonly ExactFit exact = new(surface, options.Seed);
    private readonly Dictionary<string, IReadOnlyList<(Shape Shape, Standing Standing)>> stands = new(StringComparer.Ordinal);
    private readonly HashSet<string> never = new(StringComparer.Ordinal);

    public Surface Surface => surface;

    public QuickFit Quick => quick;

    public FitAnswer Fit(IReadOnlyList<Shape> shapes, Clock clock)
    {
        var standings = Decide(shapes, clock, options.FitBudget, options.QuickTries);
        if (standings is null)
            return new FitAnswer.Open();
        return standings.Count == shapes.Count
            ? new FitAnswer.Stands(standings)
            : new FitAnswer.Misfit(Shrink(shapes, clock));
    }

    /// <summary>Null: open. Empty for a non-empty set: proved no.</summary>
    private IReadOnlyList<Standing>? Decide(IReadOnlyList<Shape> shapes, Clock clock, TimeSpan budget, int tries)
    {
        if (shapes.Count == 0)
            return [];
        var key = KeyOf(shapes);
        if (stands.TryGetValue(key, out var known))
            return Matched(shapes, known);
        if (never.Contains(key))
            return [];
        var layout = quick.Best(shapes, tries, clock.Cancel);
        var standings = layout.Standings.Count == shapes.Count
            ? [.. layout.Standings.OrderBy(s => s.Item)]
            : exact.Decide(shapes, clock, budget);
        if (standings is { Count: > 0 })
            stands[key] = [.. standings.Select(s => (shapes[s.Item], s))];
        else if (standings is not null)
            never.Add(key);
        return standings;
    }

    private IReadOnlyList<int> Shrink(IReadOnlyList<Shape> shapes, Clock clock)
    {
        var kept = Enumerable.Range(0, shapes.Count).ToList();

        // Small things are tried for leaving out first: the large ones that stay say most about other sets.
        foreach (var item in Enumerable.Range(0, shapes.Count).OrderBy(i => shapes[i].BodyArea).ThenBy(i => i))
        {
            if (clock.IsUp)
                break;
            var without = kept.Where(i => i != item).ToList();
            if (without.Count > 0 && Decide([.. without.Select(i => shapes[i])], clock, options.ShrinkBudget, options.QuickTries / 3) is { Count: 0 })
                kept = without;
        }

        return kept;
    }

    private static string KeyOf(IReadOnlyList<Shape> shapes) => string.Join(" + ", shapes.Select(s => s.Key).Order(StringComparer.Ordinal));

    /// <summary>A layout known for things of the same shapes, handed to these.</summary>
    private static IReadOnlyList<Standing> Matched(IReadOnlyList<Shape> shapes, IReadOnlyList<(Shape Shape, Standing Standing)> known)
    {
        var free = known.ToLookup(k => k.Shape.Key).ToDictionary(g => g.Key, g => new Queue<(Shape Shape, Standing Standing)>(g), StringComparer.Ordinal);
        return [.. shapes.Select((shape, i) => Adopt(shape, i, free[shape.Key].Dequeue()))];
    }

    private static Standing Adopt(Shape shape, int item, (Shape Shape, Standing Standing) known)
    {
        // Equal keys mean equal poses, but not always in the same order.
        var pose = known.Shape.Poses[known.Standing.Pose];
        var same = Array.FindIndex(shape.Poses, p => p.Pieces.SequenceEqual(pose.Pieces) && p.Switches.SequenceEqual(pose.Switches));
        return known.Standing with { Item = item, Pose = same };
    }
}
