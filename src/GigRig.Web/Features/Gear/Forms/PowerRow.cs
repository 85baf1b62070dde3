using System.Globalization;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>An answer to a question that may be left open.</summary>
public enum YesNo
{
    Yes,
    No,
}

/// <summary>What a device must be fed, as typed. One voltage is typed where the device is made for just one.</summary>
public sealed class PowerRow
{
    public string Min { get; set; } = "9";

    public string Max { get; set; } = "";

    public int? Current { get; set; }

    public CurrentType Type { get; set; }

    public Polarity Polarity { get; set; }

    public bool Battery { get; set; }

    public int? BatteryCapacity { get; set; }

    public YesNo? Digital { get; set; }

    public static string Volts(Millivolts volts) => (volts.Value / 1000m).ToString("0.###", CultureInfo.InvariantCulture);

    public static PowerRow Show(PowerNeed need) => new()
    {
        Min = Volts(need.Min),
        Max = need.Max == need.Min ? "" : Volts(need.Max),
        Current = need.Current.Value,
        Type = need.Type,
        Polarity = need.Polarity,
        Battery = need.Battery,
        BatteryCapacity = need.BatteryCapacity,
        Digital = need.Digital is { } digital ? digital ? YesNo.Yes : YesNo.No : null,
    };

    public PowerNeed Read(EntryReader read)
    {
        var min = read.Volts("power/min", "Voltage", Min);
        var max = string.IsNullOrWhiteSpace(Max) ? min : read.Volts("power/max", "Highest voltage", Max);
        return new(min, max, Milliamps.From(read.Whole("power/current", "Draw", Current)), Type, Polarity, Battery, BatteryCapacity, Digital is { } digital ? digital == YesNo.Yes : null);
    }
}
