namespace GigRig.Planning.Choosing;

/// <summary>What every set that stands and is fed keeps: the weights of its devices add up to no more than <paramref name="Most"/>.</summary>
/// <param name="Weights">One for each candidate, and perhaps for each off-board thing after them; none negative.</param>
internal sealed record Bound(long[] Weights, long Most)
{
    /// <summary>The weight of a thing; what has none given weighs nothing.</summary>
    public long Of(int thing) => thing < Weights.Length ? Weights[thing] : 0;

    /// <summary>Whether any set could break it.</summary>
    public bool Binds => Weights.Sum() > Most;
}
