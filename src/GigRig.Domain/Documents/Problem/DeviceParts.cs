using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Domain.Documents.Problem;

[Description("What a device must be fed. Volts from min to max, both allowed; current in milliamps before headroom.")]
public sealed record PowerDocument
{
    [Volts]
    public required decimal Min { get; init; }

    [Volts]
    public required decimal Max { get; init; }

    [Within(0, Bounds.MostDraw)]
    public required int Current { get; init; }

    public CurrentType Type { get; init; }

    [Description("The sign of the centre contact.")]
    public Polarity Polarity { get; init; }

    [Description("Whether it can run on a battery of its own.")]
    public bool Battery { get; init; }

    [Description("Of that battery, in milliamp hours. Absent: not known.")]
    [Within(1, Bounds.MostBatteryCapacity)]
    public int? BatteryCapacity { get; init; }

    [Description("Whether it computes, and so puts clock noise on its supply. Absent: not known. Advice only.")]
    public bool? Digital { get; init; }

    internal static PowerDocument Of(PowerNeed power) => new()
    {
        Min = power.Min.ToVolts(),
        Max = power.Max.ToVolts(),
        Current = power.Current.Value,
        Type = power.Type,
        Polarity = power.Polarity,
        Battery = power.Battery,
        BatteryCapacity = power.BatteryCapacity,
        Digital = power.Digital,
    };

    internal PowerNeed ToPower() => new(Min.ToMillivolts(), Max.ToMillivolts(), Current.MilliA, Type, Polarity, Battery, BatteryCapacity, Digital);
}

[Description("A jack of the unturned body.")]
public sealed record JackDocument
{
    public required JackUse Carries { get; init; }

    public required Side Side { get; init; }

    [Description("Millimetres from the side's left end; for left and right, from the front.")]
    [Within(0, Bounds.MostSize)]
    public required int At { get; init; }

    internal static JackDocument Of(Jack jack) => new() { Carries = jack.Use, Side = jack.Side, At = jack.At.Value };

    internal Jack ToJack() => new(Carries, Side, At.Mm);
}

public sealed record PointDocument
{
    [Within(0, Bounds.MostSize)]
    public required int X { get; init; }

    [Within(0, Bounds.MostSize)]
    public required int Y { get; init; }

    internal static PointDocument Of(Point point) => new() { X = point.X.Value, Y = point.Y.Value };

    internal Point ToPoint() => new(X.Mm, Y.Mm);
}
