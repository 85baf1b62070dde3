using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>Lists every set of devices and off-board things that keeps bans, pins, limits and musts, the best first.</summary>
internal sealed class EveryChoice(RigProblem problem)
{
    private EventLimits Limits => problem.Event.Limits;

    public IEnumerable<OneChoice> BestFirst() =>
        (from devices in Subsets(problem.Devices.Where(d => !problem.Options.Ban.Contains(d.Id)).ToList())
         from offBoard in Subsets(problem.OffBoard.Where(i => !problem.Options.Ban.Contains(i.Id)).ToList())
         where problem.Options.Pin.All(pin => pin == problem.Amp?.Id || devices.Any(d => d.Id == pin) || offBoard.Any(i => i.Id == pin))
         where problem.Options.Fixed.All(place => place.Id == problem.Supply?.Id || devices.Any(d => d.Id == place.Id))
         let choice = Weigh(devices, offBoard)
         where choice is { Missing: 0 }
         orderby choice.Order
         select choice).ToList();

    /// <summary>Null where a limit is passed.</summary>
    public OneChoice? Weigh(IReadOnlyList<Device> devices, IReadOnlyList<OffBoardItem> offBoard)
    {
        var supply = problem.Supply;
        var onBoard = devices.Sum(d => d.Mass.Value);
        var carried = onBoard + offBoard.Sum(i => i.Mass.Value) + problem.Board.Mass.Value + (supply?.Mass.Value ?? 0) + (problem.Amp?.Mass.Value ?? 0);
        var load = onBoard + (supply is { Mount: SupplyMount.Top or SupplyMount.Under } ? supply.Mass.Value : 0);
        var covered = devices.Sum(d => Area(d.Size)) + (supply is { Mount: SupplyMount.Top, Size: { } size } ? Area(size) : 0);
        var whole = problem.Board.Width.Value * problem.Board.Depth.Value;
        if (carried > (Limits.Mass?.Value ?? int.MaxValue)
            || devices.Count > (Limits.Devices ?? int.MaxValue)
            || load > (problem.Board.MaxLoad?.Value ?? int.MaxValue)
            || 100 * covered > (100 - (Limits.FreeArea ?? 0)) * whole)
            return null;
        var moments = new EveryMoment([.. devices.Select(d => d.Functions), problem.Amp?.Functions ?? [], .. offBoard.Select(i => i.Functions)]);
        return new(devices, offBoard, Missing(moments), WantsOf(moments), problem.Event.Needs.Sum(need => moments.BestRating(need.Role)), carried);
    }

    private int Missing(EveryMoment moments) =>
        problem.Event.Needs.Count(need => need.Level == NeedLevel.Must && moments.BestRating(need.Role) == 0)
        + problem.Event.Sounds.Count(sound => sound.Level == NeedLevel.Must && !moments.CanPlay(sound.Roles));

    private long WantsOf(EveryMoment moments) =>
        problem.Event.Needs.Where(need => need.Level == NeedLevel.Want && moments.BestRating(need.Role) > 0).Sum(need => (long)need.Weight)
        + problem.Event.Sounds.Where(sound => sound.Level == NeedLevel.Want && moments.CanPlay(sound.Roles)).Sum(sound => (long)sound.Weight);

    private static int Area(Domain.Geometry.BodySize size) => size.Width.Value * size.Depth.Value;

    private static IEnumerable<List<T>> Subsets<T>(List<T> all) =>
        Enumerable.Range(0, 1 << all.Count).Select(set => all.Where((_, i) => (set >> i & 1) == 1).ToList());
}
