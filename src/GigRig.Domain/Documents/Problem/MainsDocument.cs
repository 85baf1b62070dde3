using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Documents.Problem;

[Description("What a thing takes from the mains. Absent: not known.")]
public sealed record MainsDocument
{
    [Description("Volts. Of a switch-selected thing, what it is set to.")]
    [Within(Bounds.LeastMainsVolts, Bounds.MostMainsVolts)]
    public int? Least { get; init; }

    [Description("Absent: made for just the one voltage.")]
    [Within(Bounds.LeastMainsVolts, Bounds.MostMainsVolts)]
    public int? Most { get; init; }

    [Description("The letter of the IEC listing of world plugs.")]
    public MainsPlug? Plug { get; init; }

    [Within(1, Bounds.MostMainsWatts)]
    public int? Watts { get; init; }

    internal static MainsDocument? Of(MainsInput mains) => mains == MainsInput.Unknown
        ? null
        : new() { Least = mains.Least, Most = mains.Most, Plug = mains.Plug, Watts = mains.Watts };

    internal MainsInput ToMains() => new(Least, Most, Plug, Watts);
}

[Description("The mains where the gig is. Absent: not known.")]
public sealed record VenueDocument
{
    [Within(Bounds.LeastMainsVolts, Bounds.MostMainsVolts)]
    public int? Volts { get; init; }

    [Description("The letter of the IEC listing of world plugs.")]
    public MainsPlug? Socket { get; init; }

    internal static VenueDocument? Of(VenueMains venue) => venue == VenueMains.Unknown ? null : new() { Volts = venue.Volts, Socket = venue.Socket };

    internal VenueMains ToVenue() => new(Volts, Socket);
}
