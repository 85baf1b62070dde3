using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("The unit feeding the devices. Always comes along when given.")]
public sealed record SupplyDocument
{
    public const string DefaultId = "supply";

    [Within(1, GearId.MaxLength)]
    public string? Id { get; init; }

    [Within(1, Bounds.LongestName)]
    public string? Name { get; init; }

    [Within(0, Bounds.MostMass)]
    public int Mass { get; init; }

    public required SupplyMount Mount { get; init; }

    [Description("Needed with depth and height unless the supply is off the board.")]
    [Within(Bounds.LeastSize, Bounds.MostSize)]
    public int? Width { get; init; }

    [Within(Bounds.LeastSize, Bounds.MostSize)]
    public int? Depth { get; init; }

    [Within(Bounds.LeastSize, Bounds.MostSize)]
    public int? Height { get; init; }

    [Within(0, Bounds.MostOutlets)]
    public required IReadOnlyList<OutletDocument> Outlets { get; init; }

    [Description("Milliamps. Absent: the sum of the outlets.")]
    [Within(1, Bounds.MostTotalCurrent)]
    public int? TotalCurrent { get; init; }

    public MainsDocument? Mains { get; init; }

    public static SupplyDocument Of(Supply supply) => new()
    {
        Id = supply.Id.Value,
        Name = supply.Name,
        Mass = supply.Mass.Value,
        Mount = supply.Mount,
        Width = supply.Size?.Width.Value,
        Depth = supply.Size?.Depth.Value,
        Height = supply.Size?.Height.Value,
        Outlets = [.. supply.Outlets.Select(OutletDocument.Of)],
        TotalCurrent = supply.TotalCurrent?.Value,
        Mains = MainsDocument.Of(supply.Mains),
    };

    public Supply ToSupply() => new(
        new(Id ?? DefaultId),
        Name ?? Id ?? DefaultId,
        Mass.G,
        Mount,
        (Width, Depth, Height) is (null, null, null) ? null : new BodySize((Width ?? 0).Mm, (Depth ?? 0).Mm, (Height ?? 0).Mm),
        Outlets.ToValues(outlet => outlet.ToOutlet()),
        TotalCurrent?.MilliA)
    {
        Mains = Mains?.ToMains() ?? MainsInput.Unknown,
    };
}
