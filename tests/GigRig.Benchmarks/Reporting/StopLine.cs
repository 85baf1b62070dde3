using System.Globalization;
using System.Text.Json;
using GigRig.Benchmarks.Measuring;
using GigRig.Benchmarks.Problems;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;

namespace GigRig.Benchmarks.Reporting;

/// <summary>One call-off as one line of JSON. Members that do not apply are null.</summary>
/// <param name="WaitedMs">From calling off to the answer; null where the answer came first.</param>
/// <param name="WorkedMs">Processor time of the process meanwhile.</param>
/// <param name="Wants">What the rig covers; null without a rig.</param>
/// <param name="IsFault">The rig is not the best one reported, breaks a rule, or an answer contradicts what is published.</param>
internal sealed record StopLine(string File, long CalledOffMs, double? WaitedMs, double? WorkedMs, string Status, bool Proven, long? Wants, long? Bound, bool IsFault)
{
    public static StopLine Of(NamedProblem asked, Stopped stopped)
    {
        var proposed = stopped.Outcome as PlanOutcome.Proposed;
        var bound = proposed?.Bound ?? (stopped.Outcome as PlanOutcome.Undecided)?.Bound;
        return new(
            asked.Name,
            (long)stopped.CalledOff.TotalMilliseconds,
            stopped.Waited is { } waited ? Math.Round(waited.TotalMilliseconds, 1) : null,
            stopped.Worked is { } worked ? Math.Round(worked.TotalMilliseconds, 1) : null,
            stopped.Outcome.GetType().Name.ToLowerInvariant(),
            proposed?.Proven == true,
            proposed?.Best.Score.Wants,
            bound,
            IsWrong(asked, stopped, proposed, bound));
    }

    public string ToJson() => JsonSerializer.Serialize(this, JsonSerializerOptions.Web);

    public static string Sum(IEnumerable<StopLine> lines)
    {
        StopLine[] calledOff = [.. lines.Where(l => l.WaitedMs is not null)];
        return calledOff.Length == 0
            ? "Every answer came before it was called off."
            : $"called off {calledOff.Length} times: wait {Marks(calledOff.Select(l => l.WaitedMs!.Value))}; processor time {Marks(calledOff.Select(l => l.WorkedMs!.Value))}";
    }

    private static string Marks(IEnumerable<double> times)
    {
        double[] sorted = [.. times.Order()];
        return string.Create(CultureInfo.InvariantCulture, $"median {sorted[sorted.Length / 2]:0.0} ms, 95 % {sorted[(sorted.Length - 1) * 95 / 100]:0.0} ms, worst {sorted[^1]:0.0} ms");
    }

    private static bool IsWrong(NamedProblem asked, Stopped stopped, PlanOutcome.Proposed? proposed, long? bound) =>
        (stopped.BestSeen is { } seen && (proposed is null || proposed.Best.Score.CompareChoice(seen.Score) < 0))
        || (proposed is not null && RuleBook.Check(asked.Problem, proposed.Best.Rig).Count > 0)
        || (stopped.Outcome is PlanOutcome.Impossible && asked.Published is { } known && known.Fits != false)
        || (asked.Published?.Optimum is { } optimum && (bound < optimum || proposed?.Best.Score.Wants > optimum || (proposed is { Proven: true } && proposed.Best.Score.Wants != optimum)));
}
