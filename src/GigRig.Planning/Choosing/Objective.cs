using GigRig.Domain.Wishes;
using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>The tiers of a score that a choice decides, packed into as few sums as their sizes allow, most important first.</summary>
internal sealed class Objective
{
    /// <summary>A packed sum stays well inside what the solver keeps exact.</summary>
    private const long MostPacked = 1L << 45;

    private readonly int fixedMass;

    public Objective(ChoiceVariables variables, CoverageParts coverage)
    {
        var question = variables.Question;
        fixedMass = question.FixedMass;
        var mostMass = question.Candidates.Sum(c => (long)c.Device.Mass.Value) + question.OffBoard.Sum(i => (long)i.Mass.Value);
        Tier[] tiers =
        [
            new(LinearExpr.WeightedSum(coverage.Wants.Select(w => w.Covered), coverage.Wants.Select(w => (long)w.Weight)), 0, coverage.Wants.Sum(w => (long)w.Weight)),
            new(LinearExpr.Sum(coverage.RatingSteps), 0, coverage.RatingSteps.Count),
            new(LinearExpr.Sum(variables.Devices) * -1, -question.Candidates.Length, 0),
            new(LimitParts.Mass(variables) * -1, -mostMass, 0),
        ];
        MostWants = tiers[0].Most;
        Sums = [.. Pack(tiers)];
    }

    public long MostWants { get; }

    /// <summary>What to maximise, one after the other.</summary>
    public PackedTiers[] Sums { get; }

    public long[] ValuesOf(Score score)
    {
        ReadOnlySpan<long> values = [score.Wants, score.Rating, -score.Devices, fixedMass - score.Mass.Value];
        var packed = new long[Sums.Length];
        for (int s = 0, first = 0; s < Sums.Length; first += Sums[s].Count, s++)
            packed[s] = Sums[s].Pack(values[first..]);
        return packed;
    }

    private static IEnumerable<PackedTiers> Pack(IEnumerable<Tier> tiers)
    {
        var group = new List<Tier>();
        var most = 1L;
        foreach (var tier in tiers)
        {
            if (group.Count > 0 && most > MostPacked / tier.Span)
            {
                yield return new(group.ToArray());
                group.Clear();
                most = 1;
            }

            group.Add(tier);
            most *= tier.Span;
        }

        yield return new(group);
    }
}
