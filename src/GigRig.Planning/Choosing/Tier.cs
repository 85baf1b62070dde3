using Google.OrTools.Sat;

namespace GigRig.Planning.Choosing;

/// <summary>One thing to make as large as can be, with the least and the most it can be.</summary>
internal sealed record Tier(LinearExpr Sum, long Least, long Most)
{
    /// <summary>How many different values there are.</summary>
    public long Span => Most - Least + 1;
}

/// <summary>Neighbouring tiers as one number: a step of an earlier one outweighs all of the later ones.</summary>
internal sealed class PackedTiers(IReadOnlyList<Tier> tiers)
{
    public LinearExpr Sum { get; } = tiers.Skip(1).Aggregate(tiers[0].Sum, (packed, tier) => (packed * tier.Span) + tier.Sum);

    public int Count => tiers.Count;

    public long Pack(ReadOnlySpan<long> values)
    {
        var packed = values[0];
        for (var t = 1; t < tiers.Count; t++)
            packed = (packed * tiers[t].Span) + values[t];
        return packed;
    }

    /// <summary>The most the first tier can be when the whole is at most this.</summary>
    public long FirstWithin(long packed)
    {
        var scale = tiers.Skip(1).Aggregate(1L, (s, tier) => s * tier.Span);
        var leastRest = tiers.Skip(1).Aggregate(0L, (rest, tier) => (rest * tier.Span) + tier.Least);
        return Math.Clamp((long)Math.Floor((packed - leastRest) / (double)scale), tiers[0].Least, tiers[0].Most);
    }
}
