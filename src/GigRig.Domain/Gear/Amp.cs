using GigRig.Domain.Units;

namespace GigRig.Domain.Gear;

/// <summary>The insert between an amp's preamp and power amp. In a parallel loop the amp blends, so devices in it run fully wet.</summary>
public enum AmpLoop
{
    None,
    Series,
    Parallel,
}

/// <summary>The amp played through. Its channels are functions that share a section.</summary>
/// <param name="Footswitch">Whether its channels can be changed by foot.</param>
/// <param name="LoopLevel">How strong the signal at its send is; of no account without a loop.</param>
public sealed record Amp(
    GearId Id,
    string Name,
    Grams Mass,
    ValueList<RoleFunction> Functions,
    AmpLoop Loop = AmpLoop.None,
    bool Footswitch = false,
    SignalLevel LoopLevel = SignalLevel.Unknown)
{
    public MainsInput Mains { get; init; } = MainsInput.Unknown;
}
