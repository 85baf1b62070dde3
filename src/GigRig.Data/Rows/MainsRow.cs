using GigRig.Domain.Gear;

namespace GigRig.Data.Rows;

/// <summary>What a thing takes from the mains, in volts and watts.</summary>
internal sealed class MainsRow
{
    public int? LeastVolts { get; set; }

    public int? MostVolts { get; set; }

    public MainsPlug? Plug { get; set; }

    public int? Watts { get; set; }

    public static MainsRow From(MainsInput mains) =>
        new() { LeastVolts = mains.Least, MostVolts = mains.Most, Plug = mains.Plug, Watts = mains.Watts };

    public MainsInput ToMains() => new(LeastVolts, MostVolts, Plug, Watts);
}
