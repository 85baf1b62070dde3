using System.ComponentModel;
using GigRig.Domain.Events;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;

namespace GigRig.Domain.Documents.Outcome;

[Description("A rule-clean rig with its score.")]
public sealed record ProposalDocument
{
    public required ScoreDocument Score { get; init; }

    public required IReadOnlyList<ChosenDocument> Chosen { get; init; }

    [Description("Where a supply on top of the board stands.")]
    public SpotDocument? Supply { get; init; }

    public required ChainDocument Chain { get; init; }

    [Description("Wanted roles and sounds that are not covered.")]
    public required IReadOnlyList<UncoveredDocument> Uncovered { get; init; }

    internal static ProposalDocument Of(Proposal proposal, RigProblem problem) => new()
    {
        Score = ScoreDocument.Of(proposal.Score),
        Chosen = [.. ChosenDocument.AllIn(proposal, problem)],
        Supply = proposal.Rig.Supply is { } at ? new() { X = at.At.X.Value, Y = at.At.Y.Value, Turn = (int)at.Turn } : null,
        Chain = ChainDocument.Of(proposal.Rig.Chain),
        Uncovered = [.. UncoveredDocument.AllIn(proposal.Coverage)],
    };
}

[Description("Tier by tier; a later one never costs an earlier one. Mass in grams, leads in millimetres of patch lead, reach in presses times half millimetres, fronts in lines.")]
public sealed record ScoreDocument
{
    public required long Wants { get; init; }

    public required int Rating { get; init; }

    public required int Devices { get; init; }

    public required int Mass { get; init; }

    public required int Leads { get; init; }

    public required long Reach { get; init; }

    public required int Fronts { get; init; }

    internal static ScoreDocument Of(Score score) =>
        new()
        {
            Wants = score.Wants,
            Rating = score.Rating,
            Devices = score.Devices,
            Mass = score.Mass.Value,
            Leads = score.Leads.Value,
            Reach = score.Reach,
            Fronts = score.Fronts,
        };
}

public sealed record SpotDocument
{
    public required int X { get; init; }

    public required int Y { get; init; }

    public required int Turn { get; init; }
}

[Description("A wanted role, or a sound by its name, that is not covered.")]
public sealed record UncoveredDocument
{
    public string? Role { get; init; }

    public string? Sound { get; init; }

    public required int Weight { get; init; }

    internal static IEnumerable<UncoveredDocument> AllIn(Coverage coverage) =>
        coverage.Needs.Where(n => n.Cover is null && n.Need.Level == NeedLevel.Want)
            .Select(n => new UncoveredDocument { Role = n.Need.Role.Key, Weight = n.Need.Weight })
            .Concat(coverage.Sounds.Where(s => s.Covers is null && s.Sound.Level == NeedLevel.Want)
                .Select(s => new UncoveredDocument { Sound = s.Sound.Name, Weight = s.Sound.Weight }));
}
