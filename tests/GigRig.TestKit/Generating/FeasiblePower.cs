using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.TestKit.Generating;

/// <summary>A supply made to measure: each device gets outlets of its own, plain, turned about, in parallel or in series, and just the leads for it.</summary>
internal sealed record FeasiblePower(Supply Supply, PowerAdapters Adapters, ValueList<Feed> HookUp)
{
    private static readonly FeasiblePower Nothing = new(A.Supply(), PowerAdapters.None, []);

    public static Gen<FeasiblePower> Of(ValueList<Device> devices) =>
        Gen.Select(Gen.Int[0, 4].Array[devices.Count], Gen.Int[0, 20].Array[devices.Count], (ways, spare) =>
            devices.Index().Where(device => device.Item.Power is not null).Aggregate(Nothing, (power, device) =>
                power.Feeding(device.Item.Id, device.Item.Power!, ways[device.Index], spare[device.Index])));

    private FeasiblePower Feeding(GearId id, PowerNeed need, int way, int spare) => (way, need.Type) switch
    {
        (1, CurrentType.Dc) => With(id, OutletJoin.Single, [need.Min], need, need.Current.Value + spare, reversed: true),
        (2, CurrentType.Dc) => With(id, OutletJoin.Parallel, [need.Max, need.Max], need, (need.Current.Value + 1) / 2 + spare),
        (3, CurrentType.Dc) => With(id, OutletJoin.Series, [1.V, need.Min - 1.V], need, need.Current.Value + spare),
        (4, _) when need.Battery => this with { HookUp = [.. HookUp, Feed.FromBattery(id)] },
        _ => With(id, OutletJoin.Single, [need.Max], need, need.Current.Value + spare),
    };

    private FeasiblePower With(GearId id, OutletJoin join, ValueList<Millivolts> settings, PowerNeed need, int milliamps, bool reversed = false)
    {
        var polarity = (need.Polarity == Polarity.Positive) != reversed ? Polarity.Positive : Polarity.Negative;
        var outlets = settings.Select((volts, i) => new Outlet($"{id}-{i}", [volts], milliamps.MilliA, need.Type, polarity)).ToList();
        var feed = new Feed(id, outlets.Select(outlet => outlet.Id).ToValueList(), join, Millivolts.Zero, settings, reversed);
        return new(
            Supply with { Outlets = [.. Supply.Outlets, .. outlets] },
            new(Adapters.Reverse + (reversed ? 1 : 0), Adapters.Parallel + (join == OutletJoin.Parallel ? 1 : 0), Adapters.Series + (join == OutletJoin.Series ? 1 : 0)),
            [.. HookUp, feed with { Volts = feed.Arriving }]);
    }
}
