using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.TestKit.Building;

public static class RigBuilding
{
    /// <summary>Stands a device on the board and puts it last in the front chain.</summary>
    public static Rig Placing(this Rig rig, string id, int x, int y, Turn turn = Turn.None) => rig with
    {
        Placements = [.. rig.Placements, new(new(id), new(x.Mm, y.Mm), turn)],
        Chain = rig.Chain with { Front = [.. rig.Chain.Front, new(id)] },
    };

    /// <summary>Sets the parts of the chain, ids between blanks.</summary>
    public static Rig Chained(this Rig rig, string front, string loop = "") =>
        rig with { Chain = new([.. Ids(front)], [.. Ids(loop)]) };

    public static Rig PlacingSupply(this Rig rig, int x, int y, Turn turn = Turn.None) =>
        rig with { Supply = new(new("supply"), new(x.Mm, y.Mm), turn) };

    public static Rig Bringing(this Rig rig, params string[] offBoard) =>
        rig with { OffBoard = [.. rig.OffBoard, .. offBoard.Select(id => new GearId(id))] };

    /// <summary>One outlet set to a whole voltage, arriving as it is.</summary>
    public static Rig Feeding(this Rig rig, string device, string outlet, int volts = 9, bool reversed = false) =>
        rig.With(new Feed(new(device), [outlet], OutletJoin.Single, volts.V, [volts.V], reversed));

    public static Rig FeedingParallel(this Rig rig, string device, int volts, params string[] outlets) =>
        rig.With(new Feed(new(device), [.. outlets], OutletJoin.Parallel, volts.V, [.. outlets.Select(_ => volts.V)]));

    public static Rig FeedingSeries(this Rig rig, string device, int voltsEach, string first, string second) =>
        rig.With(new Feed(new(device), [first, second], OutletJoin.Series, (2 * voltsEach).V, [voltsEach.V, voltsEach.V]));

    public static Rig OnBattery(this Rig rig, string device) => rig.With(Feed.FromBattery(new(device)));

    public static Rig With(this Rig rig, Feed feed) => rig with { HookUp = [.. rig.HookUp, feed] };

    private static IEnumerable<GearId> Ids(string text) =>
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(id => new GearId(id));
}
