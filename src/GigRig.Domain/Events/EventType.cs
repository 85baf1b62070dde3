using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Domain.Events;

/// <summary>Whether a need is a condition or a wish.</summary>
public enum NeedLevel
{
    Must,
    Want,
}

/// <summary>One role wanted. The weight counts only for a want: 1–1 000 000.</summary>
public sealed record Need(Role Role, NeedLevel Level = NeedLevel.Must, int Weight = Need.DefaultWeight)
{
    public const int DefaultWeight = 10;
    public const int MaxWeight = 1_000_000;
}

/// <summary>Several roles that must be on together: 1–16 of them, none twice.</summary>
public sealed record Sound(string Name, ValueList<Role> Roles, NeedLevel Level = NeedLevel.Must, int Weight = Need.DefaultWeight)
{
    public const int MaxRoles = 16;
}

/// <summary>What an event allows. Null means no limit.</summary>
/// <param name="Mass">Of all that is carried: board, supply, amp, devices and off-board things.</param>
/// <param name="Devices">Boxes on the board.</param>
/// <param name="FreeArea">Per cent of the board's area that no body may cover, 0–100.</param>
public sealed record EventLimits(Grams? Mass = null, int? Devices = null, int? FreeArea = null)
{
    public static EventLimits None { get; } = new();
}

/// <summary>Which devices go between the amp's send and return.</summary>
public enum ChainPolicy
{
    /// <summary>Time effects go in the loop when the amp makes the distortion.</summary>
    Auto,
    AllInFront,
    TimeInLoop,
}

/// <summary>A kind of gig: what it needs, which sounds are played, what it allows.</summary>
public sealed record EventType(string Name, ValueList<Need> Needs, ValueList<Sound> Sounds, EventLimits Limits, ChainPolicy Chain = ChainPolicy.Auto)
{
    /// <summary>What comes out of the wall there; only the sheets ask.</summary>
    public VenueMains Venue { get; init; } = VenueMains.Unknown;
}
