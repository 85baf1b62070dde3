namespace GigRig.Planning.Choosing;

/// <summary>What every set that stands and is fed keeps: the weights of its devices add up to no more than <paramref name="Most"/>.</summary>
/// <param name="Weights">One for each candidate, and perhaps for each off-board thing after them; none negative.</param>
internal sealed record Bound(long[] Weights, long Most)
{
    /// <summary>The weight of a thing; what has none given weighs nothing.</summary>
    public long Of(int thing) => thing < Weights.Length ? Weights[thing] : 0;

    /// <summary>What it says of the others, once these things are in the set.</summary>
    public Bound With(IEnumerable<int> given)
    {
        var (weights, most) = ((long[])Weights.Clone(), Most);
        foreach (var thing in given.Where(thing => thing < weights.Length))
            (most, weights[thing]) = (most - weights[thing], 0);
        return new(weights, most);
    }

    /// <summary>Whether any set could break it.</summary>
    public bool Binds => Weights.Sum() > Most;
}
