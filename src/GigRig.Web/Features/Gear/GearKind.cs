using GigRig.Domain.Gear;
using MudBlazor;

namespace GigRig.Web.Features.Gear;

/// <summary>A kind of gear as pages speak of it.</summary>
/// <param name="Word">Stands in addresses.</param>
public sealed record GearKind(string Word, Type Thing, string One, string Many, string Icon)
{
    public static IReadOnlyList<GearKind> All { get; } =
    [
        new("device", typeof(Device), "Device", "Devices", Icons.Material.Outlined.Tune),
        new("board", typeof(Board), "Board", "Boards", Icons.Material.Outlined.ViewStream),
        new("supply", typeof(Supply), "Supply", "Supplies", Icons.Material.Outlined.Power),
        new("amp", typeof(Amp), "Amp", "Amps", Icons.Material.Outlined.Speaker),
        new("off-board", typeof(OffBoardItem), "Off-board item", "Off-board items", Icons.Material.Outlined.Sell),
        new("lead", typeof(Lead), "Lead", "Leads", Icons.Material.Outlined.Cable),
        new("instrument", typeof(Instrument), "Instrument", "Instruments", Icons.Material.Outlined.MusicNote),
    ];

    public static GearKind? Find(string? word) => All.FirstOrDefault(kind => kind.Word == word);

    public static GearKind Of<T>() => All.First(kind => kind.Thing == typeof(T));
}
