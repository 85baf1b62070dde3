using GigRig.Domain.Units;

namespace GigRig.Domain.Gear;

/// <summary>Direct or alternating current. Feeding one where the other is asked for destroys gear.</summary>
public enum CurrentType
{
    Dc,
    Ac,
}

/// <summary>The sign of the centre contact of a power jack. Centre negative is the usual one for floor devices.</summary>
public enum Polarity
{
    Negative,
    Positive,
}

/// <summary>What a device must be fed. <paramref name="Min"/> to <paramref name="Max"/> is the range it is made for, both ends allowed.</summary>
/// <param name="Current">What it draws, before any headroom.</param>
/// <param name="Battery">Whether it can run from a battery of its own when no outlet is left for it.</param>
/// <param name="BatteryCapacity">Of that battery in mAh, 1–20 000; null where the owner does not say. Only tells how long it lasts.</param>
/// <param name="Digital">Whether it computes, and so puts clock noise on its supply; null where not said. Only advice asks.</param>
public sealed record PowerNeed(
    Millivolts Min,
    Millivolts Max,
    Milliamps Current,
    CurrentType Type = CurrentType.Dc,
    Polarity Polarity = Polarity.Negative,
    bool Battery = false,
    int? BatteryCapacity = null,
    bool? Digital = null)
{
    /// <summary>What must be reserved at an outlet: the current with its headroom, rounded up to a whole milliamp.</summary>
    /// <param name="headroom">A fraction, 0–5: 0.25 adds a quarter.</param>
    public Milliamps DrawWith(decimal headroom) => ((int)decimal.Ceiling(Current.Value * (1 + headroom))).MilliA;
}

/// <summary>One jack of a supply.</summary>
/// <param name="Volts">The voltages it can be set to; at least one.</param>
/// <param name="Group">Outlets with the same group share their return; null means isolated.</param>
public sealed record Outlet(string Id, ValueList<Millivolts> Volts, Milliamps Current, CurrentType Type = CurrentType.Dc, Polarity Polarity = Polarity.Negative, string? Group = null);

/// <summary>How many of each power adapter lead are owned.</summary>
/// <param name="Reverse">Swap the polarity.</param>
/// <param name="Parallel">Join two isolated outlets for the sum of their currents.</param>
/// <param name="Series">Join two isolated outlets for the sum of their voltages.</param>
/// <param name="Splitter">Feed one more device from the same outlet.</param>
public sealed record PowerAdapters(int Reverse = 0, int Parallel = 0, int Series = 0, int Splitter = 0)
{
    public static PowerAdapters None { get; } = new();
}
