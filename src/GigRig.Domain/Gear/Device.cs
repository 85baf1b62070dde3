using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Gear;

/// <summary>An owned floor effects unit.</summary>
/// <param name="Turns">The ways it may stand; at least one.</param>
/// <param name="Power">Null for a passive device.</param>
/// <param name="Jacks">Empty for a bare rectangle: nothing is reserved beside the body.</param>
/// <param name="Switches">Centres of the foot switches on the unturned body, from its front-left corner.</param>
/// <param name="WantsBarePickup">Whether the pickup must reach it through nothing that buffers, as many fuzzes ask: its gain is set by what drives it.</param>
/// <param name="InputLevel">The strongest signal its input is made for.</param>
public sealed record Device(
    GearId Id,
    string Name,
    BodySize Size,
    Grams Mass,
    ValueList<Turn> Turns,
    PowerNeed? Power,
    ValueList<Jack> Jacks,
    Bypass Bypass,
    ValueList<Point> Switches,
    ValueList<RoleFunction> Functions,
    bool WantsBarePickup = false,
    SignalLevel InputLevel = SignalLevel.Unknown)
{
    /// <summary>Whether it belongs in the audio chain: it has an audio input or output, or nothing is said about its jacks.</summary>
    public bool CarriesAudio => Jacks.Count == 0 || Jacks.Any(jack => jack.Use is JackUse.In or JackUse.Out);

    /// <summary>Whether it has a send and a return of its own, and so can work before and behind an amp's preamp at once.</summary>
    public bool HasSendAndReturn => Jacks.Any(jack => jack.Use == JackUse.Send) && Jacks.Any(jack => jack.Use == JackUse.Return);
}
