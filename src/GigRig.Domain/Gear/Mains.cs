namespace GigRig.Domain.Gear;

/// <summary>Mains plugs and sockets by the letters of the IEC's open listing of world plugs.</summary>
public enum MainsPlug
{
    A,
    B,
    C,
    D,
    E,
    F,
    G,
    H,
    I,
    J,
    K,
    L,
    M,
    N,
    O,
}

/// <summary>What a thing takes from the mains. Each null where the owner does not say.</summary>
/// <param name="Least">Volts, 50–500. Of a switch-selected thing, what it is set to.</param>
/// <param name="Most">Volts, no less than <paramref name="Least"/>; null where it is made for just one.</param>
/// <param name="Plug">At the end of its mains lead.</param>
/// <param name="Watts">On its label, 1–10 000.</param>
public sealed record MainsInput(int? Least = null, int? Most = null, MainsPlug? Plug = null, int? Watts = null)
{
    public static MainsInput Unknown { get; } = new();
}

/// <summary>The mains where a gig is. Each null where not said.</summary>
/// <param name="Volts">50–500, as the country's nominal voltage.</param>
public sealed record VenueMains(int? Volts = null, MainsPlug? Socket = null)
{
    public static VenueMains Unknown { get; } = new();
}
