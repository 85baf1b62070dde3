using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Wiring;

/// <summary>How the mains at the venue agree with what a thing is made for.</summary>
public enum MainsVoltage
{
    NotKnown,
    Right,
    TooLow,
    TooHigh,
}

/// <summary>Whether a mains plug goes into the sockets of the venue.</summary>
public enum MainsFit
{
    NotKnown,
    Fits,
    NeedsAdapter,
}

/// <summary>One thing that goes into a mains socket.</summary>
public sealed record MainsLine(GearId Thing, MainsInput Input, MainsVoltage Voltage, MainsFit Fit);

/// <summary>The mains end of a rig: what is plugged in, and whether it may be, where the gig is. Advice for packing; a look at the label on the thing decides.</summary>
/// <param name="Lines">The supply, then the amp. Other things that need a socket are not known of.</param>
public sealed record MainsPlan(VenueMains Venue, ValueList<MainsLine> Lines)
{
    /// <summary>How far off, as a part, the venue's voltage still counts as right: the usual tolerance of public mains. From memory, so a margin of ours and no test of a standard.</summary>
    public static decimal Tolerance => 0.10m;

    // The plug goes into these sockets as well as into its own (common practice, no source). Left out where only some makes do.
    private static readonly (MainsPlug Plug, MainsPlug Socket)[] AlsoFits =
        [(MainsPlug.A, MainsPlug.B), (MainsPlug.C, MainsPlug.E), (MainsPlug.C, MainsPlug.F), (MainsPlug.C, MainsPlug.J), (MainsPlug.C, MainsPlug.K)];

    /// <summary>On all labels together; null unless all are known.</summary>
    public int? Watts => Lines.All(line => line.Input.Watts is not null) ? Lines.Sum(line => line.Input.Watts) : null;

    public static MainsPlan Of(RigProblem problem)
    {
        var venue = problem.Event.Venue;
        var lines = new List<MainsLine>();
        if (problem.Supply is { } supply)
            lines.Add(LineOf(supply.Id, supply.Mains, venue));
        if (problem.Amp is { } amp)
            lines.Add(LineOf(amp.Id, amp.Mains, venue));
        return new(venue, lines.ToValueList());
    }

    private static MainsLine LineOf(GearId thing, MainsInput input, VenueMains venue) => new(thing, input, VoltageOf(input, venue), FitOf(input, venue));

    private static MainsVoltage VoltageOf(MainsInput input, VenueMains venue)
    {
        if (input.Least is not { } least || venue.Volts is not { } volts)
            return MainsVoltage.NotKnown;
        if (volts < least * (1 - Tolerance))
            return MainsVoltage.TooLow;
        return volts > (input.Most ?? least) * (1 + Tolerance) ? MainsVoltage.TooHigh : MainsVoltage.Right;
    }

    private static MainsFit FitOf(MainsInput input, VenueMains venue)
    {
        if (input.Plug is not { } plug || venue.Socket is not { } socket)
            return MainsFit.NotKnown;
        return plug == socket || AlsoFits.Contains((plug, socket)) ? MainsFit.Fits : MainsFit.NeedsAdapter;
    }
}
