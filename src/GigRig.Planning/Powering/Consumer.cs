using GigRig.Domain.Gear;

namespace GigRig.Planning.Powering;

/// <summary>A device that must be fed.</summary>
/// <param name="Draw">Milliamps with headroom.</param>
/// <param name="Patterns">The ways to feed it on its own.</param>
internal sealed record Consumer(GearId Id, PowerNeed Need, int Draw, FeedPattern[] Patterns)
{
    /// <summary>Consumers with equal keys are fed by the same outlets alike.</summary>
    public string Key { get; } = $"{Need.Type} {Need.Polarity} {Need.Battery} {Need.Min.Value}-{Need.Max.Value} {string.Join('|', Patterns.Select(p => p.Key))}";

    /// <summary>Whether whatever feeds this one would feed <paramref name="other"/> too.</summary>
    public bool IsAtLeastAsHungryAs(Consumer other) => Key == other.Key && Draw >= other.Draw;
}
