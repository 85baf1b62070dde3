using GigRig.Domain.Gear;

namespace GigRig.Domain.Wiring;

/// <summary>What a lead goes from or to.</summary>
public enum HopThing
{
    Instrument,
    Device,
    Amp,

    /// <summary>The mixing desk, or the box on stage that leads there.</summary>
    Desk,

    /// <summary>Of the amp.</summary>
    Footswitch,
}

/// <summary>One end of a hop.</summary>
/// <param name="Id">Null for the desk, a foot switch, and an instrument that is not said.</param>
/// <param name="Number">Which jack of this use, from 0: 1 is the second of a stereo pair.</param>
public sealed record HopEnd(HopThing Thing, GearId? Id, JackUse Jack, int Number = 0);

/// <summary>What a hop is for, and so which kind of lead serves it.</summary>
public enum HopKind
{
    /// <summary>From the instrument to whatever comes first.</summary>
    Instrument,

    /// <summary>From device to device on the board.</summary>
    Patch,

    /// <summary>From the board to the amp's input, or to a box for the desk.</summary>
    ToAmp,

    /// <summary>From the amp's send or to its return.</summary>
    Loop,

    /// <summary>The desk's own line to something with an output made for it. Asked of the engineer, not owned.</summary>
    DeskLine,

    /// <summary>The lead that belongs to the amp's foot switch.</summary>
    Footswitch,
}

/// <summary>One lead that a rig needs: from an output to an input.</summary>
public sealed record Hop(HopKind Kind, HopEnd From, HopEnd To)
{
    /// <summary>The kinds of owned lead that serve it; none for a line that comes with something else. Instrument and loop leads are alike but for their names.</summary>
    public ValueList<LeadKind> Served => Kind switch
    {
        HopKind.Patch => [LeadKind.Patch],
        HopKind.Instrument => [LeadKind.Instrument],
        HopKind.ToAmp => [LeadKind.Instrument, LeadKind.Loop],
        HopKind.Loop => [LeadKind.Loop, LeadKind.Instrument],
        _ => [],
    };

    public bool NeedsOwnedLead => Served.Count > 0;
}
