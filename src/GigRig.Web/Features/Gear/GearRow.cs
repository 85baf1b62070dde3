using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.Web.Shared;
using GigRig.Web.Sheets;

namespace GigRig.Web.Features.Gear;

/// <summary>One thing in the list.</summary>
public sealed record GearRow(GearKind Kind, Guid Id, int Version, string Name, object Thing, Ownership Ownership)
{
    public ValueList<RoleFunction> Functions => Thing switch
    {
        Device device => device.Functions,
        Amp amp => amp.Functions,
        OffBoardItem item => item.Functions,
        _ => [],
    };

    /// <summary>The same thing under another name.</summary>
    public object Named(string name) => Thing switch
    {
        Device device => device with { Name = name },
        Board board => board with { Name = name },
        Supply supply => supply with { Name = name },
        Amp amp => amp with { Name = name },
        OffBoardItem item => item with { Name = name },
        Lead lead => lead with { Name = name },
        Instrument instrument => instrument with { Name = name },
        _ => throw new InvalidOperationException($"A {Thing.GetType().Name} has no name."),
    };

    public static GearRow Of<T>(Stored<OwnedGear<T>> stored, Func<T, string> name)
        where T : class => new(GearKind.Of<T>(), stored.Id, stored.Version, name(stored.Item.Thing), stored.Item.Thing, stored.Item.Ownership);

    /// <summary>What one wants to know of it at a glance.</summary>
    public string Facts(LengthUnit unit) => Thing switch
    {
        Device d => Join(Measures.Footprint(d.Size.Width, d.Size.Depth, unit), d.Power is { } p ? $"{p.Min}, {p.Current}" : "passive"),
        Board b => Join(Measures.Footprint(b.Width, b.Depth, unit), b.Rails.Count == 0 ? "plain surface" : Words.Count(b.Rails.Count, "rail", "rails")),
        Supply s => Join(OutletsOf(s), s.TotalCurrent is { } total ? $"{total} in all" : ""),
        Amp a => Join(Words.Of(a.Loop), a.Footswitch ? "footswitch" : "", $"{a.Mass.Value / 1000m:0.#} kg"),
        OffBoardItem o => $"{o.Mass}",
        Lead l => Join(l.Kind.ToString(), LeadWords.Length(l.Length, unit), $"× {l.Count}"),
        Instrument i => i.Kind,
        _ => "",
    };

    /// <summary>Alike ones counted: <c>6 × 9 V 100 mA, 2 × 9 / 12 V 500 mA</c>.</summary>
    private static string OutletsOf(Supply supply) => string.Join(", ", supply.Outlets
        .CountBy(outlet => $"{string.Join(" / ", outlet.Volts.Select(volts => volts.ToString()))} {outlet.Current}")
        .Select(alike => $"{alike.Value} × {alike.Key}"));

    private static string Join(params IEnumerable<string> parts) => string.Join(" · ", parts.Where(part => part.Length > 0));
}
