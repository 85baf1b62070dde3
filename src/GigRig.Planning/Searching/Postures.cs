using GigRig.Planning.Choosing;

namespace GigRig.Planning.Searching;

/// <summary>What is decided of how things are to stand, and what may come of it.</summary>
/// <param name="Otherwise">Things in the set that stand otherwise than in the row.</param>
/// <param name="Open">Others that may.</param>
/// <param name="IsAnyhow">Whether all postures are left open.</param>
/// <param name="Shares">To begin fitting with: for the first and the second bound of a group.</param>
/// <param name="Tables">The bounds that say most, with the shares fitted to them; null while they are not looked at.</param>
/// <param name="Most">No set that stands like this is worth more.</param>
internal sealed record Postures(int[] Otherwise, int[] Open, bool IsAnyhow, Shares[] Shares, (Bound Bound, Shares Shares)[][]? Tables, long Most)
{
    /// <summary>What is neither decided to stand otherwise nor open stands in the row.</summary>
    public Posture[] Each(int things)
    {
        var each = new Posture[things];
        if (IsAnyhow)
            return each;
        Array.Fill(each, Posture.InRow);
        foreach (var thing in Open)
            each[thing] = Posture.Any;
        foreach (var thing in Otherwise)
            each[thing] = Posture.Otherwise;
        return each;
    }
}
