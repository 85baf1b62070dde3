using GigRig.Domain.Gear;

namespace GigRig.Planning.Powering;

/// <summary>Outlets that are alike in all that matters, so that the search need not tell them apart. Volts in millivolts, current in milliamps.</summary>
internal sealed record OutletClass(int[] Volts, int Current, CurrentType Type, Polarity Polarity, bool Isolated, string[] Ids)
{
    public int Count => Ids.Length;

    /// <summary>Whatever matters about it, how many there are included.</summary>
    public string Key => $"{Count} × {string.Join(',', Volts)} mV {Current} mA {Type} {Polarity} {Isolated}";

    public static OutletClass[] Of(Supply? supply)
    {
        if (supply is null)
            return [];
        var inGroup = supply.Outlets.Where(o => o.Group is not null).CountBy(o => o.Group!).ToDictionary(StringComparer.Ordinal);
        return
        [
            .. supply.Outlets
                .GroupBy(o => (
                    Volts: string.Join(',', o.Volts.Select(v => v.Value).Order()),
                    o.Current,
                    o.Type,
                    o.Polarity,
                    Isolated: o.Group is null || inGroup[o.Group] == 1))
                .Select(alike => new OutletClass(
                    [.. alike.First().Volts.Select(v => v.Value).Order()],
                    alike.Key.Current.Value,
                    alike.Key.Type,
                    alike.Key.Polarity,
                    alike.Key.Isolated,
                    [.. alike.Select(o => o.Id)])),
        ];
    }
}
