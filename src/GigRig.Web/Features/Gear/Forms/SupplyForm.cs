using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>An outlet of a supply, as typed.</summary>
public sealed class OutletRow
{
    public string Id { get; set; } = "";

    public string Volts { get; set; } = "9";

    public int? Current { get; set; } = 100;

    public CurrentType Type { get; set; }

    public Polarity Polarity { get; set; }

    /// <summary>Empty for an isolated outlet.</summary>
    public string Group { get; set; } = "";
}

public sealed class SupplyForm : GearForm<Supply>
{
    public SupplyMount Mount { get; set; }

    public string Width { get; set; } = "";

    public string Depth { get; set; } = "";

    public string Height { get; set; } = "";

    public int? Mass { get; set; }

    public int? TotalCurrent { get; set; }

    public MainsEntries Mains { get; set; } = new();

    public List<OutletRow> Outlets { get; set; } = [new() { Id = "1" }];

    protected override string PlaceInDocument => "supply";

    /// <summary>A further outlet like the last one, with the next number.</summary>
    public void AddOutlet()
    {
        var like = Outlets.LastOrDefault() ?? new OutletRow();
        var number = Outlets.Count + 1;
        while (Outlets.Exists(outlet => outlet.Id == $"{number}"))
            number++;
        Outlets.Add(new() { Id = $"{number}", Volts = like.Volts, Current = like.Current, Type = like.Type, Polarity = like.Polarity, Group = like.Group });
    }

    protected override void Show(Supply supply)
    {
        Name = supply.Name;
        Mount = supply.Mount;
        (Width, Depth, Height) = supply.Size is { } size ? (Length(size.Width), Length(size.Depth), Length(size.Height)) : ("", "", "");
        Mass = supply.Mass.Value;
        TotalCurrent = supply.TotalCurrent?.Value;
        Mains = MainsEntries.Show(supply.Mains);
        Outlets = [.. supply.Outlets.Select(Show)];
    }

    protected override Supply Read(EntryReader read) => new(
        Unnamed,
        read.Name("name", "Name", Name),
        Grams.From(read.Whole("mass", "Mass", Mass)),
        Mount,
        ReadSize(read),
        Outlets.Select((outlet, i) => Read(outlet, $"outlets/{i}", read)).ToValueList(),
        TotalCurrent is { } total ? Milliamps.From(total) : null)
    {
        Mains = Mains.Read(),
    };

    protected override IEnumerable<Complaint> Complaints(Supply supply) => ThingCheck.Of(supply);

    // Off the board its size does not matter, and need not be typed.
    private BodySize? ReadSize(EntryReader read) =>
        Mount == SupplyMount.Off && string.IsNullOrWhiteSpace(Width + Depth + Height)
            ? null
            : new(read.Length("width", "Width", Width), read.Length("depth", "Depth", Depth), read.Length("height", "Height", Height));

    private static OutletRow Show(Outlet outlet) => new()
    {
        Id = outlet.Id,
        Volts = string.Join(" / ", outlet.Volts.Select(PowerRow.Volts)),
        Current = outlet.Current.Value,
        Type = outlet.Type,
        Polarity = outlet.Polarity,
        Group = outlet.Group ?? "",
    };

    private static Outlet Read(OutletRow row, string field, EntryReader read) => new(
        read.Name($"{field}/id", "Label", row.Id),
        read.VoltsList($"{field}/volts", "Voltage", row.Volts).ToValueList(),
        Milliamps.From(read.Whole($"{field}/current", "Current", row.Current)),
        row.Type,
        row.Polarity,
        row.Group.Trim() is { Length: > 0 } group ? group : null);
}
