using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

internal sealed class EventTypeRow : ThingRow<EventType>
{
    public string Name { get; set; } = "";

    public List<NeedRow> Needs { get; set; } = [];

    public List<SoundRow> Sounds { get; set; } = [];

    public int? MassLimitGrams { get; set; }

    public int? DeviceLimit { get; set; }

    public int? FreeAreaPercent { get; set; }

    public ChainPolicy Chain { get; set; }

    public int? VenueVolts { get; set; }

    public MainsPlug? VenueSocket { get; set; }

    public override string Title => $"event type \"{Name}\"";

    public override void Set(EventType item)
    {
        Name = item.Name;
        Needs = [.. item.Needs.Select(NeedRow.From)];
        Sounds = [.. item.Sounds.Select(SoundRow.From)];
        MassLimitGrams = item.Limits.Mass?.Value;
        DeviceLimit = item.Limits.Devices;
        FreeAreaPercent = item.Limits.FreeArea;
        Chain = item.Chain;
        (VenueVolts, VenueSocket) = item.Venue;
    }

    public override EventType ToItem() => new(
        Name,
        Needs.Select(need => need.ToNeed()).ToValueList(),
        Sounds.Select(sound => sound.ToSound()).ToValueList(),
        new EventLimits(MassLimitGrams?.G, DeviceLimit, FreeAreaPercent),
        Chain)
    {
        Venue = new(VenueVolts, VenueSocket),
    };
}
