using GigRig.Domain.Gear;
using Google.OrTools.Sat;

namespace GigRig.Benchmarks.Opponents;

/// <summary>Numbers that must not be passed, and things that must come along. The same for both opponents.</summary>
internal static class LimitModel
{
    public static void Add(Belongings belongings)
    {
        var problem = belongings.Problem;
        var limits = problem.Event.Limits;
        if (limits.Mass is { } most)
            belongings.Model.Add(MassTaken(belongings) <= most.Value - problem.Board.Mass.Value - (problem.Supply?.Mass.Value ?? 0) - (problem.Amp?.Mass.Value ?? 0));
        if (limits.Devices is { } devices)
            belongings.Model.Add(LinearExpr.Sum(belongings.Devices.Select(d => d.Taken)) <= devices);
        if (problem.Board.MaxLoad is { } load)
            belongings.Model.Add(Sum(belongings, d => d.Mass.Value) <= load.Value - (problem.Supply is { Mount: not SupplyMount.Off } supply ? supply.Mass.Value : 0));
        if (limits.FreeArea is { } free)
            belongings.Model.Add(100 * Sum(belongings, Area) <= ((100L - free) * problem.Board.Width.Value * problem.Board.Depth.Value) - (100 * TopSupplyArea(belongings)));
        if (!SupplyFits(belongings))
            belongings.Refuse();
        foreach (var pin in problem.Options.Pin.Where(id => id != problem.Amp?.Id))
            Pin(belongings, pin);
    }

    /// <summary>Grams of what is chosen.</summary>
    public static LinearExpr MassTaken(Belongings belongings) =>
        Sum(belongings, d => d.Mass.Value) + LinearExpr.WeightedSum(belongings.OffBoard.Select(i => i.Taken), belongings.OffBoard.Select(i => i.Thing.Mass.Value));

    /// <summary>Square millimetres of the body.</summary>
    public static int Area(Device device) => device.Size.Width.Value * device.Size.Depth.Value;

    public static long TopSupplyArea(Belongings belongings) =>
        belongings.Problem.Supply is { Mount: SupplyMount.Top, Size: { } size } ? size.Width.Value * size.Depth.Value : 0;

    public static LinearExpr Sum(Belongings belongings, Func<Device, int> amount) =>
        LinearExpr.WeightedSum(belongings.Devices.Select(d => d.Taken), belongings.Devices.Select(d => amount(d.Thing)));

    private static bool SupplyFits(Belongings belongings)
    {
        var board = belongings.Problem.Board;
        return belongings.Problem.Supply switch
        {
            { Mount: SupplyMount.Top, Size: { } size } => !(size.Height > board.ClearanceOver),
            { Mount: SupplyMount.Under, Size: { } size } => !(size.Height > board.ClearanceUnder)
                && ((size.Width <= board.Width && size.Depth <= board.Depth) || (size.Depth <= board.Width && size.Width <= board.Depth)),
            _ => true,
        };
    }

    private static void Pin(Belongings belongings, GearId id)
    {
        var pinned = belongings.Devices.Where(d => d.Thing.Id == id).Select(d => d.Taken)
            .Concat(belongings.OffBoard.Where(i => i.Thing.Id == id).Select(i => i.Taken))
            .ToList();
        if (pinned.Count > 0)
            belongings.Model.Add(pinned[0] == 1);
        else
            belongings.Refuse();
    }
}
