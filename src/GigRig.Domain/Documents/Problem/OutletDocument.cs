using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("One jack of a supply.")]
public sealed record OutletDocument
{
    [Within(1, Bounds.LongestLabel)]
    public required string Id { get; init; }

    [Description("The voltages it can be set to.")]
    [Volts]
    [Within(1, Bounds.MostSettings)]
    public required IReadOnlyList<decimal> Volts { get; init; }

    [Description("Milliamps.")]
    [Within(Bounds.LeastOutletCurrent, Bounds.MostOutletCurrent)]
    public required int Current { get; init; }

    public CurrentType Type { get; init; }

    public Polarity Polarity { get; init; }

    [Description("Outlets with the same group share their return. Absent: isolated.")]
    [Within(1, Bounds.LongestLabel)]
    public string? Group { get; init; }

    internal static OutletDocument Of(Outlet outlet) => new()
    {
        Id = outlet.Id,
        Volts = [.. outlet.Volts.Select(volts => volts.ToVolts())],
        Current = outlet.Current.Value,
        Type = outlet.Type,
        Polarity = outlet.Polarity,
        Group = outlet.Group,
    };

    internal Outlet ToOutlet() => new(Id, Volts.ToValues(volts => volts.ToMillivolts()), Current.MilliA, Type, Polarity, Group);
}

[Description("How many of each power adapter lead are owned. Absent: none.")]
public sealed record AdaptersDocument
{
    [Within(0, Bounds.MostAdapters)]
    public int Reverse { get; init; }

    [Within(0, Bounds.MostAdapters)]
    public int Parallel { get; init; }

    [Within(0, Bounds.MostAdapters)]
    public int Series { get; init; }

    [Within(0, Bounds.MostAdapters)]
    public int Splitter { get; init; }

    public static AdaptersDocument? Of(PowerAdapters adapters) => adapters == PowerAdapters.None
        ? null
        : new() { Reverse = adapters.Reverse, Parallel = adapters.Parallel, Series = adapters.Series, Splitter = adapters.Splitter };

    public PowerAdapters ToAdapters() => new(Reverse, Parallel, Series, Splitter);
}
