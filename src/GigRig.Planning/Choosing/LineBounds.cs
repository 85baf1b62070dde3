using GigRig.Planning.Fitting;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Bodies that cross the same line along the board stand side by side there, so their widths add up to the board's at most. A body that always covers a band
/// of the board also keeps its neighbours off by its plugs: a gap between two such bodies is at least the longer of the two plugs facing each other, hence half
/// their sum; the outermost plugs may overhang. Summed over a few lines, this also counts shallow bodies, which must cross at least one of them.
/// Twice the millimetres throughout, so that halves stay whole.
/// </summary>
internal sealed class LineBounds
{
    private const int MostLineSets = 12;

    /// <summary>What share of the bodies that never avoid a line, longest cover first, are counted with their plugs: fewer share a broader band, where more plugs are met.</summary>
    private static readonly double[] Shares = [1, 0.75, 0.5, 0.25];

    private readonly Stance[][] stances;
    private readonly Stance[] supply;
    private readonly int width;

    private LineBounds(Question question)
    {
        width = question.Surface.Width;
        stances = [.. question.Candidates.Select(c => Stance.AllOf(c.Shape, question.Surface))];
        supply = question.SupplyShape is { } shape ? Stance.AllOf(shape, question.Surface) : [];
    }

    public static IEnumerable<Bound> Of(Question question, Clock clock)
    {
        var along = new LineBounds(question);
        return LineSets.Of(along.stances.SelectMany(s => s).Concat(along.supply), question.Surface.Depth / 2)
            .Take(MostLineSets)
            .TakeWhile(_ => !clock.IsUp)
            .SelectMany(_ => Shares, along.For);
    }

    private Bound For(int[] lines, double share)
    {
        var all = stances.SelectMany(s => s).Concat(supply).ToArray();
        var bands = lines.Select(line => new Band(line, all.Where(s => s.AlwaysCrosses(line)), share)).ToArray();
        return new(
            [.. stances.Select(s => Weight(s, bands))],
            bands.Sum(b => (2L * width) + b.MostLeft + b.MostRight) - (supply.Length == 0 ? 0 : Weight(supply, bands)));
    }

    private static long Weight(Stance[] ways, Band[] bands) => ways.Length == 0 ? 0 : ways.Min(way => Starts(way, bands).Min(y => bands.Sum(band => band.Weight(way, y))));

    /// <summary>Where the lines that are crossed may change, from front to rear.</summary>
    private static IEnumerable<int> Starts(Stance way, Band[] bands) => way.Spans.Select(s => s.From)
        .Concat(bands.SelectMany(b => new[] { b.Line + 1, b.Line - way.Pose.Depth + 1 }).Where(y => way.Spans.Any(s => s.From <= y && y <= s.To)));

    /// <summary>One line, and what all the bodies that can never avoid it have in common there.</summary>
    private sealed class Band
    {
        private readonly Dictionary<Stance, long> tall = [];
        private readonly int from;
        private readonly int to;

        public Band(int line, IEnumerable<Stance> always, double share)
        {
            Line = line;
            var covers = always.OrderByDescending(s => Math.Min(line - s.CoreFrom, s.CoreTo - line)).ToArray();
            Stance[] counted = [.. covers.Take((int)Math.Ceiling(share * covers.Length))];
            if (counted.Length == 0)
                return;
            from = counted.Max(s => s.CoreFrom);
            to = counted.Min(s => s.CoreTo);
            MostLeft = counted.Max(LeftPlug);
            MostRight = counted.Max(RightPlug);
            foreach (var stance in counted)
                tall[stance] = (2L * stance.Pose.Width) + LeftPlug(stance) + RightPlug(stance);
        }

        public int Line { get; }

        public long MostLeft { get; }

        public long MostRight { get; }

        public long Weight(Stance way, int y)
        {
            if (tall.TryGetValue(way, out var weight))
                return weight;
            var crosses = y <= Line && Line < y + way.Pose.Depth;

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
