using System.ComponentModel;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Documents.Outcome;

[Description("One member of a smallest set of things that cannot hold together.")]
public sealed record ConflictDocument
{
    [Description("The id of the rule it comes from.")]
    public required string Rule { get; init; }

    public IReadOnlyList<string>? Culprits { get; init; }

    public required string Sentence { get; init; }

    internal static ConflictDocument Of(ConflictPart part) =>
        new() { Rule = part.RuleId, Culprits = part.Culprits.OrNothing(id => id.Value), Sentence = part.Sentence.ToString() };
}

[Description("A single change that helps, checked by solving again.")]
public sealed record RepairDocument
{
    public required string Kind { get; init; }

    public required string Sentence { get; init; }

    [Description("What the changed problem scores.")]
    public required ScoreDocument Score { get; init; }

    internal static RepairDocument Of(Repair repair) => new() { Kind = repair.Kind, Sentence = repair.Sentence.ToString(), Score = ScoreDocument.Of(repair.Score) };
}
