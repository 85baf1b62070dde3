using System.Numerics;

namespace GigRig.Planning.Fitting;

/// <summary>Which lengths up to a most are sums of some of the lengths added.</summary>
internal sealed class Sums(int most)
{
    private readonly ulong[] bits = new ulong[(most >> 6) + 1];

    public void Clear()
    {
        Array.Clear(bits);
        bits[0] = 1;
    }

    /// <summary>One more thing of this length.</summary>
    public void Add(int length)
    {
        var (whole, part) = (length >> 6, length & 63);
        for (var word = bits.Length - 1; word >= whole; word--)
        {
            var shifted = bits[word - whole] << part;
            if (part > 0 && word > whole)
                shifted |= bits[word - whole - 1] >> (64 - part);
            bits[word] |= shifted;
        }
    }

    /// <summary>The greatest sum that is no more than this.</summary>
    public int UpTo(int length)
    {
        var word = length >> 6;
        for (var found = bits[word] & (ulong.MaxValue >> (63 - (length & 63))); ; found = bits[--word])
        {
            if (found != 0)
                return (word << 6) + 63 - BitOperations.LeadingZeroCount(found);
        }
    }
}
