using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>The first four tiers of a score, packed into as few sums as fit: a step of an earlier tier outweighs all of the later ones.</summary>
internal sealed class Goal
{
    /// <summary>The solver's linear relaxation works in doubles, which stay exact well beyond this.</summary>
    private const long MostPacked = 1L << 45;

    public Goal(Belongings belongings, WishModel wishes)
    {
        var mostMass = belongings.Devices.Sum(d => (long)d.Thing.Mass.Value) + belongings.OffBoard.Sum(i => (long)i.Thing.Mass.Value);
        (LinearExpr Sum, long Span)[] tiers =
        [
            (wishes.Wants, wishes.MostWants + 1),
            (wishes.Rating, wishes.MostRating + 1),
            (LinearExpr.Sum(belongings.Devices.Select(d => d.Taken)) * -1, belongings.Devices.Length + 1),
            (LimitModel.MassTaken(belongings) * -1, mostMass + 1),
        ];
        Sums = [.. Pack(tiers)];
    }

    /// <summary>What to maximise, one after the other.</summary>
    public IReadOnlyList<LinearExpr> Sums { get; }

    private static IEnumerable<LinearExpr> Pack((LinearExpr Sum, long Span)[] tiers)
    {
        var (packed, span) = tiers[0];
        foreach (var tier in tiers.Skip(1))
        {
            if (span <= MostPacked / tier.Span)
            {
                (packed, span) = ((packed * tier.Span) + tier.Sum, span * tier.Span);
                continue;
            }

            yield return packed;
            (packed, span) = tier;
        }

        yield return packed;
    }
}
