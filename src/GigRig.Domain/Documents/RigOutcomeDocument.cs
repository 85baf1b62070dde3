using System.ComponentModel;
using GigRig.Domain.Documents.Outcome;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Documents;

/// <summary>The planner's answer as plain numbers and words: the <c>rig-outcome/1</c> document, see <c>docs/problem-format.md</c>.</summary>
[Description("The answer to a planning question.")]
public sealed record RigOutcomeDocument
{
    public const string FormatWord = "rig-outcome/1";

    public required string Format { get; init; }

    public required OutcomeStatus Status { get; init; }

    [Description("Whether the choice is proved best on wants, rating, devices and mass.")]
    public required bool Proven { get; init; }

    public ScoreDocument? Score { get; init; }

    [Description("Proved upper bound on the sum of the covered wants' weights.")]
    public long? Bound { get; init; }

    public IReadOnlyList<ChosenDocument>? Chosen { get; init; }

    public SpotDocument? Supply { get; init; }

    public ChainDocument? Chain { get; init; }

    public IReadOnlyList<UncoveredDocument>? Uncovered { get; init; }

    public IReadOnlyList<ConflictDocument>? Conflict { get; init; }

    public IReadOnlyList<RepairDocument>? Repairs { get; init; }

    public IReadOnlyList<ProposalDocument>? Alternatives { get; init; }

    public required long ElapsedMs { get; init; }

    public static RigOutcomeDocument Of(PlanOutcome outcome, RigProblem problem)
    {
        var bare = new RigOutcomeDocument { Format = FormatWord, Status = OutcomeStatus.Undecided, Proven = false, ElapsedMs = (long)outcome.Elapsed.TotalMilliseconds };
        return outcome switch
        {
            PlanOutcome.Proposed proposed => bare.With(ProposalDocument.Of(proposed.Best, problem)) with
            {
                Status = OutcomeStatus.Proposed,
                Proven = proposed.Proven,
                Bound = proposed.Bound,
                Repairs = proposed.Repairs.OrNothing(RepairDocument.Of),
                Alternatives = proposed.Alternatives.OrNothing(proposal => ProposalDocument.Of(proposal, problem)),
            },
            PlanOutcome.Impossible impossible => bare with
            {
                Status = OutcomeStatus.Impossible,
                Conflict = impossible.Conflict.OrNothing(ConflictDocument.Of),
                Repairs = impossible.Repairs.OrNothing(RepairDocument.Of),
            },
            PlanOutcome.Undecided undecided => bare with { Bound = undecided.Bound },
            _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "A kind of outcome that has no word."),
        };
    }

    private RigOutcomeDocument With(ProposalDocument best) =>
        this with { Score = best.Score, Chosen = best.Chosen, Supply = best.Supply, Chain = best.Chain, Uncovered = best.Uncovered };
}
