using GigRig.Planning.Choosing;

namespace GigRig.Planning.Searching;

/// <summary>What is decided of how things are to stand, and what may come of it.</summary>
/// <param name="Decided">Things in the set that stand otherwise than in the row, or are lenient.</param>
/// <param name="Open">Others that may be.</param>
/// <param name="IsAnyhow">Whether all postures are left open.</param>
/// <param name="Shares">To begin fitting with: for the first and the second bound of a group.</param>
/// <param name="Tables">The bounds that say most, with the shares fitted to them; null while they are not looked at.</param>
/// <param name="Most">No set that stands like this is worth more.</param>
internal sealed record Postures(Oddity[] Decided, Oddity[] Open, bool IsAnyhow, Shares[] Shares, (Bound Bound, Shares Shares)[][]? Tables, long Most)
{
    /// <summary>How often sets that stand like this were looked for.</summary>
    public int Looks { get; init; }

    public IEnumerable<int> Things => Decided.Select(one => one.Thing);

    public IEnumerable<int> Otherwise => Decided.Where(one => one.Posture != Posture.InRow).Select(one => one.Thing);

    /// <summary>What is neither decided nor open stands in the row, or is lenient and stays at home.</summary>
    public Posture[] Each(int things, IEnumerable<int> lenient)
    {
        var each = new Posture[things];
        Array.Fill(each, IsAnyhow ? Posture.Any : Posture.InRow);
        if (IsAnyhow)
            return each;
        foreach (var thing in lenient)
            each[thing] = Posture.AtHome;
        foreach (var (thing, posture) in Open)
            each[thing] |= posture;
        foreach (var (thing, posture) in Decided)
            each[thing] = posture;
        return each;
    }
}

/// <summary>How a thing may stand that makes a row say less of all that stands beside it.</summary>
internal readonly record struct Oddity(int Thing, Posture Posture);
