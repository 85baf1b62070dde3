namespace GigRig.Domain.Wiring;

/// <summary>Which half of the chain: between instrument and amp input, or between the amp's send and return.</summary>
public enum ChainPart
{
    Front,
    Loop,
}
