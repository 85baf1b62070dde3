using GigRig.Domain.Gear;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>What a thing takes from the mains, as typed. Everything may be left empty.</summary>
public sealed class MainsEntries
{
    public int? Least { get; set; }

    public int? Most { get; set; }

    public MainsPlug? Plug { get; set; }

    public int? Watts { get; set; }

    public static MainsEntries Show(MainsInput mains) => new() { Least = mains.Least, Most = mains.Most, Plug = mains.Plug, Watts = mains.Watts };

    public MainsInput Read() => new(Least, Most, Plug, Watts);
}
