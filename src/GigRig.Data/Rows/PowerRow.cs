using GigRig.Domain.Gear;
using GigRig.Domain.Units;

namespace GigRig.Data.Rows;

/// <summary>A device's power need: millivolts and milliamps.</summary>
internal sealed class PowerRow
{
    public int MinMillivolts { get; set; }

    public int MaxMillivolts { get; set; }

    public int Milliamps { get; set; }

    public CurrentType Type { get; set; }

    public Polarity Polarity { get; set; }

    public bool Battery { get; set; }

    public int? BatteryMilliampHours { get; set; }

    public bool? Digital { get; set; }

    public static PowerRow From(PowerNeed need) => new()
    {
        MinMillivolts = need.Min.Value,
        MaxMillivolts = need.Max.Value,
        Milliamps = need.Current.Value,
        Type = need.Type,
        Polarity = need.Polarity,
        Battery = need.Battery,
        BatteryMilliampHours = need.BatteryCapacity,
        Digital = need.Digital,
    };

    public PowerNeed ToNeed() =>
        new(MinMillivolts.MilliV, MaxMillivolts.MilliV, Milliamps.MilliA, Type, Polarity, Battery, BatteryMilliampHours, Digital);
}
