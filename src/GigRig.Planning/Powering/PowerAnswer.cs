using GigRig.Domain.Rigs;

namespace GigRig.Planning.Powering;

/// <summary>Whether a set of consumers can be fed together.</summary>
internal abstract record PowerAnswer
{
    private PowerAnswer()
    {
    }

    public sealed record Fed(IReadOnlyList<Feed> Feeds) : PowerAnswer;

    /// <summary>The search was given up. Never to be read as a no.</summary>
    public sealed record Open : PowerAnswer;

    /// <summary>Proved: these, by their positions in the set asked about, cannot all be fed; without any one of them they can, or it was not proved that they cannot.</summary>
    public sealed record Starved(IReadOnlyList<int> Consumers) : PowerAnswer;
}
