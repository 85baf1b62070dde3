using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Gear;

/// <summary>Where the supply sits: below the surface, on it among the devices, or away from the board.</summary>
public enum SupplyMount
{
    Under,
    Top,
    Off,
}

/// <summary>The unit feeding the devices.</summary>
/// <param name="Size">Null only where <paramref name="Mount"/> is <see cref="SupplyMount.Off"/>.</param>
/// <param name="TotalCurrent">What all outlets together may give; null for the sum of the outlets.</param>
public sealed record Supply(
    GearId Id,
    string Name,
    Grams Mass,
    SupplyMount Mount,
    BodySize? Size,
    ValueList<Outlet> Outlets,
    Milliamps? TotalCurrent = null)
{
    public MainsInput Mains { get; init; } = MainsInput.Unknown;

    /// <summary>Whether the outlet shares its return with no other: it names no group, or is alone in it.</summary>
    public bool IsIsolated(Outlet outlet) => outlet.Group is not { } group || Outlets.Count(other => other.Group == group) == 1;
}
