using GigRig.Planning.Fitting;
using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Rows with their gaps. Bodies that can never avoid a line along the board stand in one row there; between neighbours lies at least the gap that their plugs
/// force, which depends on the pair. Which pairs are neighbours is relaxed to counts: how often a kind of right side is followed by a kind of left side.
/// A shallow body may part one pair of neighbours on each line it crosses, and must cross some of the lines.
/// </summary>
internal sealed class RowParts
{
    /// <summary>Millimetres to which plug places are rounded, from the first to the last resort.</summary>
    private const int FinestGrain = 4;
    private const int CoarsestGrain = 128;
    private const int MostSideKinds = 5;
    private const int MostLineSets = 2;

    private readonly ChoiceVariables variables;
    private readonly Way[] ways;

    private RowParts(ChoiceVariables variables)
    {
        this.variables = variables;
        var surface = variables.Question.Surface;
        ways =
        [
            .. variables.Question.Candidates.SelectMany(c => Ways(c.Shape, surface, variables.Devices[c.Index], $"{c.Index}")),
            .. variables.Question.SupplyShape is { } supply ? Ways(supply, surface, null, "supply") : [],
        ];
    }

    public static void Add(ChoiceVariables variables)
    {
        if (variables.Clock.IsUp)
            return;
        var parts = new RowParts(variables);
        foreach (var lines in LineSets.Of(parts.ways.Select(w => w.Stance), variables.Question.Surface.Depth / 2).Take(MostLineSets))
            parts.AddFor(lines);
    }

    /// <summary>A literal for each way a thing may stand, of which exactly one holds when it is taken.</summary>
    private IEnumerable<Way> Ways(Shape shape, Surface surface, BoolVar? taken, string name)
    {
        var stances = Stance.AllOf(shape, surface);
        if (stances.Length == 0)
            return [];
        if (stances.Length == 1)
            return [new(stances[0], taken ?? (ILiteral)variables.Always)];
        var literals = stances.Select((_, p) => variables.Model.NewBoolVar($"way {p} of {name}")).ToArray();
        variables.Model.Add(LinearExpr.Sum(literals) == (taken is null ? LinearExpr.Constant(1) : taken));
        return stances.Zip(literals, (stance, literal) => new Way(stance, literal));
    }

    private void AddFor(int[] lines)
    {
        var always = lines.Select(line => ways.Where(w => w.Stance.AlwaysCrosses(line)).ToArray()).ToArray();
        // Without plugs at the sides there are no gaps to count, and the bound along the line says all.
        if (always.All(a => a.Length < 2 || a.All(w => !w.Stance.LeftSide.Any() && !w.Stance.RightSide.Any())))
            return;
        var crossings = lines.Select(_ => new List<(Way Way, BoolVar Crosses)>()).ToArray();
        foreach (var way in ways)
            Cross(way, lines, crossings);
        for (var l = 0; l < lines.Length; l++)
            AddRow(always[l], crossings[l]);
    }

    /// <summary>What does not always cross a line crosses as many of the set as it cannot avoid.</summary>
    private void Cross(Way way, int[] lines, List<(Way Way, BoolVar Crosses)>[] crossings)
    {
        var free = Enumerable.Range(0, lines.Length).Where(l => !way.Stance.AlwaysCrosses(lines[l])).ToArray();
        var fewest = way.Stance.Ys.Min(y => free.Count(l => y <= lines[l] && lines[l] < y + way.Stance.Pose.Depth));
        if (fewest == 0)
            return;
        var literals = free.Select(l => variables.Model.NewBoolVar($"crosses {lines[l]}")).ToArray();
        variables.Model.Add(LinearExpr.Sum(literals) >= fewest).OnlyEnforceIf(way.Taken);
        for (var f = 0; f < free.Length; f++)
            crossings[free[f]].Add((way, literals[f]));
    }

    private void AddRow(Way[] row, List<(Way Way, BoolVar Crosses)> crossings)
    {
        if (row.Length < 2 || variables.Clock.IsUp)
            return;
        var (rights, leftOf) = (new SideKinds(row, s => s.RightSide), new SideKinds(row, s => s.LeftSide));
        List<LinearExpr> neighbours = [], used = [];
        var byRight = rights.Kinds.Select(_ => new List<LinearExpr>()).ToArray();
        var byLeft = leftOf.Kinds.Select(_ => new List<LinearExpr>()).ToArray();
        for (var r = 0; r < rights.Kinds.Count; r++)
        {
            for (var l = 0; l < leftOf.Kinds.Count; l++)
            {
                var gap = rights.Kinds[r].Min(a => variables.Clock.IsUp ? 0 : leftOf.Kinds[l].Min(b => PlugGap.Least(a.Stance, b.Stance)));
                var times = variables.Model.NewIntVar(0, Math.Min(rights.Kinds[r].Length, leftOf.Kinds[l].Length), "neighbours");
                neighbours.Add(times);
                byRight[r].Add(times);
                byLeft[l].Add(times);
                used.Add(LinearExpr.Term(times, gap));
            }
        }

        for (var r = 0; r < rights.Kinds.Count; r++)
            variables.Model.Add(LinearExpr.Sum(byRight[r]) <= LinearExpr.Sum(rights.Kinds[r].Select(w => w.Taken)));
        for (var l = 0; l < leftOf.Kinds.Count; l++)
            variables.Model.Add(LinearExpr.Sum(byLeft[l]) <= LinearExpr.Sum(leftOf.Kinds[l].Select(w => w.Taken)));
        variables.Model.Add(LinearExpr.Sum(neighbours) >= LinearExpr.Sum(row.Select(w => w.Taken)) - 1 - LinearExpr.Sum(crossings.Select(c => c.Crosses)));
        used.AddRange(row.Select(w => LinearExpr.WeightedSum([w.Taken], [w.Stance.Pose.Width])));
        used.AddRange(crossings.Select(c => LinearExpr.Term(c.Crosses, c.Way.Stance.Pose.Width)));
        variables.Model.Add(LinearExpr.Sum(used) <= variables.Question.Surface.Width);
    }

    internal sealed record Way(Stance Stance, ILiteral Taken);

    /// <summary>Ways of standing grouped by what sticks out at one side, coarsely enough to stay few.</summary>
    private sealed class SideKinds
    {
        public SideKinds(Way[] row, Func<Stance, IEnumerable<Box>> side)
        {
            for (var grain = FinestGrain; Kinds.Count == 0 || Kinds.Count > MostSideKinds; grain *= 2)
                Kinds = grain > CoarsestGrain ? [row] : [.. row.GroupBy(w => Sign(w.Stance, side, grain)).Select(g => g.ToArray())];
        }

        public IReadOnlyList<Way[]> Kinds { get; } = [];

        private static string Sign(Stance stance, Func<Stance, IEnumerable<Box>> side, int grain) =>
            string.Join(' ', side(stance).Select(p => $"{p.Width / grain}:{p.Y / grain}").Order()) + $" {stance.FirstY / grain}-{stance.LastY / grain}";
    }
}
