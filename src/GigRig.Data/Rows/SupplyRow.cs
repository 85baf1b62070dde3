using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

internal sealed class SupplyRow : GearRow<Supply>
{
    public int MassGrams { get; set; }

    public SupplyMount Mount { get; set; }

    public SizeRow? Size { get; set; }

    public int? TotalMilliamps { get; set; }

    public MainsRow Mains { get; set; } = new();

    public List<OutletRow> Outlets { get; set; } = [];

    public override string Title => $"supply \"{Name}\"";

    protected override void SetThing(Supply thing)
    {
        Name = thing.Name;
        MassGrams = thing.Mass.Value;
        Mount = thing.Mount;
        Size = thing.Size is { } size ? SizeRow.From(size) : null;
        TotalMilliamps = thing.TotalCurrent?.Value;
        Mains = MainsRow.From(thing.Mains);
        Outlets = [.. thing.Outlets.Select(OutletRow.From)];
    }

    protected override Supply ToThing() => new(
        GearId,
        Name,
        MassGrams.G,
        Mount,
        Size?.ToSize(),
        Outlets.Select(outlet => outlet.ToOutlet()).ToValueList(),
        TotalMilliamps?.MilliA)
    {
        Mains = Mains.ToMains(),
    };
}

/// <summary>One outlet inside a supply's JSON column.</summary>
internal sealed class OutletRow
{
    public string Id { get; set; } = "";

    public List<int> Millivolts { get; set; } = [];

    public int Milliamps { get; set; }

    public CurrentType Type { get; set; }

    public Polarity Polarity { get; set; }

    public string? Group { get; set; }

    public static OutletRow From(Outlet outlet) => new()
    {
        Id = outlet.Id,
        Millivolts = [.. outlet.Volts.Select(volts => volts.Value)],
        Milliamps = outlet.Current.Value,
        Type = outlet.Type,
        Polarity = outlet.Polarity,
        Group = outlet.Group,
    };

    public Outlet ToOutlet() => new(Id, Millivolts.Select(value => value.MilliV).ToValueList(), Milliamps.MilliA, Type, Polarity, Group);
}
