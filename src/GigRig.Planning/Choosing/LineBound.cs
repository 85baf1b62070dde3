using GigRig.Planning.Fitting;
using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Bodies that cross the same line along the board stand side by side there, so their widths add up to the board's at most. A body that always covers a band
/// of the board also keeps its neighbours off by its plugs: a gap between two such bodies is at least the longer of the two plugs facing each other, hence half
/// their sum; the outermost plugs may overhang. Summed over a few lines, this also counts shallow bodies, which must cross at least one of them.
/// Twice the millimetres throughout, so that halves stay whole.
/// </summary>
internal sealed class LineBound
{
    private const int MostLineSets = 12;

    /// <summary>What share of the bodies that never avoid a line, longest cover first, are counted with their plugs: fewer share a broader band, where more plugs are met.</summary>
    private static readonly double[] Shares = [1, 0.75, 0.5, 0.25];

    private readonly ChoiceVariables variables;
    private readonly Stance[][] stances;
    private readonly Stance[] supply;
    private readonly int width;

    private LineBound(ChoiceVariables variables)
    {
        this.variables = variables;
        var question = variables.Question;
        width = question.Surface.Width;
        stances = [.. question.Candidates.Select(c => Stance.AllOf(c.Shape, question.Surface))];
        supply = question.SupplyShape is { } shape ? Stance.AllOf(shape, question.Surface) : [];
    }

    public static void Add(ChoiceVariables variables)
    {
        var bound = new LineBound(variables);
        foreach (var lines in LineSets.Of(bound.stances.SelectMany(s => s).Concat(bound.supply), variables.Question.Surface.Depth / 2).Take(MostLineSets).TakeWhile(_ => !variables.Clock.IsUp))
        {
            foreach (var share in Shares)
                bound.AddFor(lines, share);
        }
    }

    private void AddFor(int[] lines, double share)
    {
        var all = stances.SelectMany(s => s).Concat(supply).ToArray();
        var bands = lines.Select(line => new Band(line, all.Where(s => s.AlwaysCrosses(line)), share)).ToArray();
        var weights = stances.Select(s => Weight(s, bands)).ToArray();
        var most = bands.Sum(b => (2L * width) + b.MostLeft + b.MostRight) - (supply.Length == 0 ? 0 : Weight(supply, bands));
        if (weights.Sum() > most)
            variables.Model.Add(LinearExpr.WeightedSum(variables.Devices, weights) <= most);
    }

    private static long Weight(Stance[] ways, Band[] bands) => ways.Length == 0 ? 0 : ways.Min(way => way.Ys.Min(y => bands.Sum(band => band.Weight(way, y))));

    /// <summary>One line, and what all the bodies that can never avoid it have in common there.</summary>
    private sealed class Band
    {
        private readonly int line;
        private readonly HashSet<Stance> tall;
        private readonly int from;
        private readonly int to;

        public Band(int line, IEnumerable<Stance> always, double share)
        {
            this.line = line;
            var covers = always.OrderByDescending(s => Math.Min(line - s.CoreFrom, s.CoreTo - line)).ToArray();
            tall = covers.Take((int)Math.Ceiling(share * covers.Length)).ToHashSet();
            if (tall.Count == 0)
                return;
            from = tall.Max(s => s.CoreFrom);
            to = tall.Min(s => s.CoreTo);
            MostLeft = tall.Max(LeftPlug);
            MostRight = tall.Max(RightPlug);
        }

        public long MostLeft { get; }

        public long MostRight { get; }

        public long Weight(Stance way, int y)
        {
            if (tall.Contains(way))
                return (2L * way.Pose.Width) + LeftPlug(way) + RightPlug(way);
            var crosses = y <= line && line < y + way.Pose.Depth;

            // It may part two bodies that would otherwise have kept their plugs' distance.
            return crosses ? Math.Max(0, (2L * way.Pose.Width) - MostLeft - MostRight) : 0;
        }

        private long LeftPlug(Stance way) => Longest(way, p => -p.X);

        private long RightPlug(Stance way) => Longest(way, p => p.Right - way.Pose.Width);

        /// <summary>How far the plugs stand out that, wherever the body stands, are level with what every neighbour covers.</summary>
        private long Longest(Stance way, Func<Box, int> standsOut) => way.Pose.Pieces
            .Where(p => way.LastY + p.Y < to && way.FirstY + p.Rear > from)
            .Select(standsOut).Append(0).Max();
    }
}
