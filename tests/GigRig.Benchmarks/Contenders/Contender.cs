using GigRig.Benchmarks.Opponents;
using GigRig.Domain.Rigs;
using GigRig.Planning;

namespace GigRig.Benchmarks.Contenders;

/// <summary>Somebody who answers planning problems within their time limit.</summary>
internal sealed record Contender(string Name, Func<RigProblem, Answer> Solve)
{
    public static Contender Ours { get; } = new("ours", AskOurs);

    public static Contender Textbook { get; } = new("textbook", OneModel.Textbook.Solve);

    public static Contender Best { get; } = new("best", OneModel.Best.Solve);

    private static Answer AskOurs(RigProblem problem) =>
        new RigPlanner().PlanAsync(problem, PlannerOptions.Default with { Explain = false }).GetAwaiter().GetResult() switch
        {
            PlanOutcome.Proposed proposed => new(proposed.Proven ? AnswerKind.Proved : AnswerKind.Open, proposed.Best.Rig),
            PlanOutcome.Impossible => new(AnswerKind.Impossible),
            _ => new(AnswerKind.Open),
        };
}
