using System.Globalization;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;

namespace GigRig.Web.Shared;

/// <summary>How the choices of the domain are said on a page.</summary>
public static class Words
{
    public static string Of<T>(T choice)
        where T : struct, Enum => choice switch
    {
        GearStatus.LentOut => "Lent out",
        GearStatus.InRepair => "In repair",
        GearStatus.Gone => "Not mine any more",
        JackUse.In => "Input",
        JackUse.Out => "Output",
        JackUse.Power => "Power",
        Bypass.True => "True bypass (bare wire when off)",
        Bypass.Buffered => "Buffered (drives the line when off)",
        CurrentType.Dc => "DC",
        CurrentType.Ac => "AC",
        Polarity.Negative => "Centre negative (usual)",
        Polarity.Positive => "Centre positive",
        SupplyMount.Under => "Under the board",
        SupplyMount.Top => "On the board, among the devices",
        SupplyMount.Off => "Beside the board",
        AmpLoop.None => "No loop",
        AmpLoop.Series => "Series loop",
        AmpLoop.Parallel => "Parallel loop (the amp blends)",
        SignalLevel.Unknown => "Not known",
        SignalLevel.Instrument => "Instrument level",
        SignalLevel.Line => "Line level",
        InstrumentFamily.Keyboard => "Keyboard",
        NeedLevel.Must => "Must have",
        NeedLevel.Want => "Would like",
        ChainPolicy.Auto => "Delay and reverb in the loop when the amp makes the distortion",
        ChainPolicy.AllInFront => "Everything in front of the amp",
        ChainPolicy.TimeInLoop => "Delay and reverb always in the loop",
        _ => choice.ToString(),
    };

    /// <summary>A count with its noun, such as <c>1 device</c> or <c>3 devices</c>.</summary>
    public static string Count(int count, string one, string many) => $"{count.ToString(CultureInfo.CurrentCulture)} {(count == 1 ? one : many)}";
}
