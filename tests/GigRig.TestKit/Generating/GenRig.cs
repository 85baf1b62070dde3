using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Generating;

/// <summary>Rigs for a given small problem: near enough to a sensible one that each rule is kept and broken in turn.</summary>
public static class GenRig
{
    public static Gen<Rig> For(RigProblem problem) =>
        from placements in Some(problem.Devices).SelectMany(devices => GenMany.Each(devices.Count, i => Standing(devices[i].Id, problem.Board, devices[i].Turns)))
        from supply in SupplyPlace(problem)
        from offBoard in Some(problem.OffBoard.Select(item => item.Id).ToValueList())
        from hookUp in GenMany.Each(placements.Count, i => FeedFor(problem, problem.FindDevice(placements[i].Id)!))
        from chain in ChainOf(placements.Select(placement => problem.FindDevice(placement.Id)!).Where(device => device.CarriesAudio), problem.Amp)
        select new Rig(placements, supply, offBoard, hookUp.SelectMany(feeds => feeds).ToValueList(), chain);

    /// <summary>On the board more often than not, turned as allowed more often than not.</summary>
    public static Gen<Placement> Standing(GearId id, Board board, ValueList<Turn> turns) =>
        Gen.Select(
            Gen.Int[-1, board.Width.Value],
            Gen.Int[-1, board.Depth.Value],
            Gen.Frequency((6, Gen.OneOf([.. turns])), (1, Gen.Enum<Turn>())),
            (x, y, turn) => new Placement(id, new(x.Mm, y.Mm), turn));

    /// <summary>No feed for a passive device; else from one outlet, from two, from its battery, or none at all.</summary>
    public static Gen<ValueList<Feed>> FeedFor(RigProblem problem, Device device)
    {
        if (device.Power is null)
            return Gen.Const<ValueList<Feed>>([]);
        var battery = Gen.Const(Feed.FromBattery(device.Id));
        var wired = problem.Supply is { Outlets: { Count: > 0 } outlets } ? WiredFeed(device.Id, outlets) : battery;
        return Gen.Frequency((8, wired.Select(feed => (ValueList<Feed>)[feed])), (1, battery.Select(feed => (ValueList<Feed>)[feed])), (1, Gen.Const<ValueList<Feed>>([])));
    }

    public static Gen<Feed> WiredFeed(GearId device, ValueList<Outlet> outlets) =>
        from count in Gen.Frequency((4, Gen.Const(1)), (1, Gen.Const(2)), (1, Gen.Const(3)))
        from joined in count == 1 ? Gen.Const(OutletJoin.Single) : Gen.OneOf(OutletJoin.Parallel, OutletJoin.Series)
        from used in Gen.OneOf([.. outlets]).Array[count]
        from settings in GenMany.Each(count, i => Gen.OneOf([.. used[i].Volts]))
        from reversed in Gen.Frequency((4, Gen.Const(false)), (1, Gen.Const(true)))
        let bare = new Feed(device, used.Select(outlet => outlet.Id).ToValueList(), joined, Millivolts.Zero, settings, reversed)
        select bare with { Volts = joined == OutletJoin.Series ? settings.Sum(volts => volts.Value).MilliV : settings[0] };

    private static Gen<Placement?> SupplyPlace(RigProblem problem)
    {
        if (problem.Supply is not { } supply)
            return Gen.Const((Placement?)null);
        var place = Standing(supply.Id, problem.Board, [Turn.None, Turn.Quarter]).Select(placement => (Placement?)placement);
        var (on, off) = supply.Mount == SupplyMount.Top ? (9, 1) : (1, 9);
        return Gen.Frequency((on, place), (off, Gen.Const((Placement?)null)));
    }

    /// <summary>Any order, a part of it in the loop where there is one.</summary>
    private static Gen<Chain> ChainOf(IEnumerable<Device> devices, Amp? amp) =>
        from order in Gen.Shuffle(devices.Select(device => device.Id).ToArray())
        from front in amp is { Loop: not AmpLoop.None } ? Gen.Int[0, order.Length] : Gen.Const(order.Length)
        select new Chain([.. order[..front]], [.. order[front..]]);

    private static Gen<ValueList<T>> Some<T>(ValueList<T> items) =>
        Gen.Bool.Array[items.Count].Select(taken => items.Where((_, index) => taken[index]).ToValueList());
}
