using GigRig.Benchmarks.Contenders;
using GigRig.Benchmarks.Measuring;
using GigRig.Benchmarks.Opponents;
using GigRig.Benchmarks.Problems;
using GigRig.Domain.Rigs;

namespace GigRig.Benchmarks.Reporting;

/// <summary>One problem answered by ours, which comes first, and its opponents.</summary>
internal sealed record ComparedRow(NamedProblem Asked, TimeSpan Limit, IReadOnlyList<ComparedRun> Runs)
{
    public ComparedRun Ours => Runs[0];

    public IReadOnlyList<string> LeftOut => OneModel.LeavesOut(Asked.Problem);

    /// <summary>How many times longer than ours; an answer that was not closed in time counts as the whole limit.</summary>
    public double WallRatio(ComparedRun run) => Counted(run) / Counted(Ours);

    /// <summary>The same for processor time, as used, also where time ran out.</summary>
    public double CpuRatio(ComparedRun run) => run.Measured.Cpu.TotalMilliseconds / Math.Max(1, Ours.Measured.Cpu.TotalMilliseconds);

    public double Counted(ComparedRun run) => run.Answer.IsClosed ? run.Measured.Wall.TotalMilliseconds : Limit.TotalMilliseconds;

    /// <summary>Broken rules, and proofs that another answer refutes. Opponents that leave something out are only held to the rules.</summary>
    public IEnumerable<string> Faults()
    {
        foreach (var run in Runs.Where(r => r.Answer.BrokenRules.Count > 0))
            yield return $"{run.Name} breaks {string.Join(", ", run.Answer.BrokenRules)}";
        if (LeftOut.Count > 0)
            yield break;
        foreach (var closed in Runs.Where(r => r.Answer.IsClosed))
        {
            foreach (var other in Runs.Where(r => r.Answer.Score is not null && r.Answer.BrokenRules.Count == 0))
            {
                if (closed.Answer.Kind == AnswerKind.Impossible)
                    yield return $"{closed.Name} says impossible, {other.Name} has a rig";
                else if (other.Answer.Score!.Value.CompareChoice(closed.Answer.Score!.Value) > 0)
                    yield return $"{other.Name} beats what {closed.Name} proved best";
            }
        }
    }
}

/// <summary>One contender on one problem.</summary>
internal sealed record ComparedRun(string Name, Measured<Answer> Measured)
{
    public Answer Answer => Measured.Result;

    /// <summary>Times the answering alone, then has the answer judged.</summary>
    public static ComparedRun Of(Contender contender, RigProblem problem)
    {
        var measured = Measured<Answer>.Of(() => contender.Solve(problem));
        return new(contender.Name, measured with { Result = measured.Result.Judged(problem) });
    }

    /// <summary>How it ended; where time ran out, with the weight of wants reached by then.</summary>
    public string Word => Answer.Kind switch
    {
        AnswerKind.Proved => "proved",
        AnswerKind.Impossible => "impossible",
        _ => Answer.Score is { } score ? $"unproved at {score.Wants}" : "nothing",
    };
}
