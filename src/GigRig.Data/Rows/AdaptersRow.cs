using GigRig.Domain.Gear;

namespace GigRig.Data.Rows;

/// <summary>How many power adapter leads an owner has. At most one row an owner; it can't be deleted, only set to zeros.</summary>
internal sealed class AdaptersRow : OwnedRow
{
    public int Reverse { get; set; }

    public int Parallel { get; set; }

    public int Series { get; set; }

    public int Splitter { get; set; }

    public void Set(PowerAdapters adapters) => (Reverse, Parallel, Series, Splitter) = adapters;

    public PowerAdapters ToAdapters() => new(Reverse, Parallel, Series, Splitter);
}
