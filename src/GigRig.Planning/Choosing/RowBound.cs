using GigRig.Planning.Fitting;
using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>
/// Bodies that, wherever they stand, all cross one line along the board stand in one row. Between neighbours a row needs at least the longer of the two plugs that
/// face each other, hence half their sum; the outer plugs of the row may overhang.
/// </summary>
internal static class RowBound
{
    public static void Add(ChoiceVariables variables)
    {
        var question = variables.Question;
        var rows = question.Candidates.Select(c => (c.Index, Cores: Cores(c.Shape, question.Surface))).ToArray();
        var supply = question.SupplyShape is { } shape ? Cores(shape, question.Surface) : null;
        var lines = rows.SelectMany(r => r.Cores ?? []).Select(c => (c.From + c.To) / 2).CountBy(line => line)
            .OrderByDescending(l => l.Value).ThenBy(l => l.Key).Select(l => l.Key).Append(question.Surface.Depth / 2).Distinct().Take(6);
        foreach (var line in lines.ToArray())
        {
            var crossing = rows.Where(r => Crosses(r.Cores, line)).Select(r => (r.Index, Cores: r.Cores!)).ToArray();
            AddFor(variables, crossing, Crosses(supply, line) ? supply : null);
        }
    }

    private static bool Crosses(Core[]? cores, int line) => cores is not null && cores.All(c => c.From <= line && line < c.To);

    private static void AddFor(ChoiceVariables variables, (int Index, Core[] Cores)[] crossing, Core[]? supply)
    {
        if (crossing.Length == 0)
            return;
        var all = supply is null ? crossing.SelectMany(c => c.Cores).ToArray() : [.. crossing.SelectMany(c => c.Cores), .. supply];
        var from = all.Max(c => c.From);
        var to = all.Min(c => c.To);
        long mostLeft = all.Max(c => c.LeftPlug(from, to));
        long mostRight = all.Max(c => c.RightPlug(from, to));
        var taken = supply?.Min(c => 2L * c.Pose.Width) ?? 0;
        variables.Model.Add(
            LinearExpr.WeightedSum(crossing.Select(c => variables.Devices[c.Index]), crossing.Select(c => c.Cores.Min(core => core.Twice(from, to))))
            <= (2L * variables.Question.Surface.Width) + mostLeft + mostRight - taken);
    }

    /// <summary>For each pose the band it covers wherever it stands; null when some pose has none.</summary>
    private static Core[]? Cores(Shape shape, Surface surface)
    {
        var cores = new List<Core>();
        foreach (var pose in shape.Poses)
        {
            if (pose.Width > surface.Width || surface.StandsAt(pose.Depth) is not { Count: > 0 } spans)
                continue;
            var core = new Core(pose, spans[0].From, spans[^1].To);
            if (core.From >= core.To)
                return null;
            cores.Add(core);
        }

        return cores.Count == 0 ? null : [.. cores];
    }

    /// <summary>A pose whose front edge is always within a range of y.</summary>
    private sealed record Core(Pose Pose, int FirstY, int LastY)
    {
        public int From => LastY;

        public int To => FirstY + Pose.Depth;

        public long LeftPlug(int from, int to) => Pose.Pieces.Where(p => p.X < 0 && IsMet(p, from, to)).Select(p => -p.X).DefaultIfEmpty().Max();

        public long RightPlug(int from, int to) =>
            Pose.Pieces.Where(p => p.Right > Pose.Width && IsMet(p, from, to)).Select(p => p.Right - Pose.Width).DefaultIfEmpty().Max();

        public long Twice(int from, int to) => (2L * Pose.Width) + LeftPlug(from, to) + RightPlug(from, to);

        /// <summary>Whether the piece, wherever its body stands, is level with the band that every neighbour covers.</summary>
        private bool IsMet(Box piece, int from, int to) => LastY + piece.Y < to && FirstY + piece.Rear > from;
    }
}
