using GigRig.Benchmarks.Contenders;

namespace GigRig.Benchmarks.Reporting;

/// <summary>Prints rows as they come, in Markdown, and what they amount to.</summary>
internal sealed class ComparedTable(TextWriter output, IReadOnlyList<Contender> contenders, TimeSpan limit)
{
    private readonly List<ComparedRow> rows = [];

    public bool HasFaults => rows.Any(r => r.Faults().Any());

    public void PrintHead()
    {
        var heads = contenders.SelectMany((c, i) => i == 0 ? new[] { "ours ms", "ours" } : [$"{c.Name} ms", c.Name, $"× {c.Name}"]);
        output.WriteLine($"| problem | {string.Join(" | ", heads)} | wants | placed | note |");
        output.WriteLine($"|---|{string.Concat(contenders.Select((_, i) => i == 0 ? "--:|---|" : "--:|---|--:|"))}--:|--:|---|");
    }

    public void Print(ComparedRow row)
    {
        rows.Add(row);
        var cells = row.Runs.SelectMany((r, i) => i == 0 ? new[] { $"{row.Counted(r):0.0}", r.Word } : [$"{row.Counted(r):0.0}", r.Word, $"{row.WallRatio(r):0.0}"]);
        var notes = row.Faults().Concat(row.LeftOut.Select(part => $"opponents leave out {part}"));
        output.WriteLine($"| {row.Asked.Name} | {string.Join(" | ", cells)} | {row.Ours.Answer.Score?.Wants} | {row.Ours.Answer.Score?.Devices} | {string.Join("; ", notes)} |");
        output.Flush();
    }

    public void PrintSums()
    {
        if (rows.Count == 0)
            return;
        output.WriteLine();
        for (var c = 0; c < contenders.Count; c++)
        {
            var times = rows.Select(r => r.Counted(r.Runs[c])).ToList();
            var (proved, peak) = (rows.Count(r => r.Runs[c].Answer.IsClosed), rows.Max(r => r.Runs[c].Measured.PeakBytes) >> 20);
            output.WriteLine($"{contenders[c].Name}: median {Statistics.Share(times, 0.5):0.0} ms, 95 % within {Statistics.Share(times, 0.95):0.0} ms, closed {proved} of {rows.Count}, peak {peak} MB");
        }

        for (var c = 1; c < contenders.Count; c++)
        {
            var (wall, cpu) = (Statistics.GeometricMean(rows.Select(r => r.WallRatio(r.Runs[c]))), Statistics.GeometricMean(rows.Select(r => r.CpuRatio(r.Runs[c]))));
            output.WriteLine($"{contenders[c].Name} against ours: geometric mean of the ratios {wall:0.0} × wall, {cpu:0.0} × processor time");
        }

        output.WriteLine($"What was not closed within {limit.TotalSeconds:0.###} s counts as that long (wall). Answers judged by the rule book; {rows.Count(r => r.Faults().Any())} rows with faults.");
    }
}

internal static class Statistics
{
    /// <summary>The least value that this share of all values does not pass.</summary>
    public static double Share(IEnumerable<double> values, double share)
    {
        var sorted = values.Order().ToList();
        return sorted[Math.Max(0, (int)Math.Ceiling(share * sorted.Count) - 1)];
    }

    public static double GeometricMean(IEnumerable<double> values) => Math.Exp(values.Average(Math.Log));
}
