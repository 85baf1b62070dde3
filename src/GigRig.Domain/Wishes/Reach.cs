using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Wishes;

/// <summary>
/// How far the feet have to go for what is pressed. The most used switches belong at the front, the most used of all at its middle: common practice, no source;
/// that a way back counts twice as much as one to the side is a rule of thumb of ours.
/// </summary>
public static class Reach
{
    /// <summary>Presses times way, summed over the devices on the board; less is better. In half millimetres, so that the middle of an odd width is met exactly.</summary>
    public static long Of(RigProblem problem, Rig rig, Coverage coverage)
    {
        var presses = Presses(coverage);
        return rig.Placements.DistinctBy(placement => placement.Id).Sum(Of);

        long Of(Placement placement)
        {
            if (problem.FindDevice(placement.Id) is not { } device || !presses.TryGetValue(device.Id, out var times))
                return 0;
            var switches = Outline.Of(device, problem.Options.Plugs).PlacedSwitches(placement);
            return switches.Count == 0 ? 0 : (long)times * switches.Min(point => Way(point, problem.Board.Width));
        }
    }

    /// <summary>How often each thing is pressed, as far as an event tells: once for every need and every sound that it does.</summary>
    public static IReadOnlyDictionary<GearId, int> Presses(Coverage coverage) =>
        coverage.Needs.Select(need => need.Cover).OfType<Cover>().Select(cover => cover.Thing)
            .Concat(coverage.Sounds.SelectMany(sound => (sound.Covers ?? []).Select(cover => cover.Thing).Distinct()))
            .CountBy(thing => thing)
            .ToDictionary();

    /// <summary>From the middle of the front edge to a switch, in half millimetres: to the side, and twice the way back.</summary>
    public static long Way(Point point, Millimetres boardWidth) => Math.Abs((2L * point.X.Value) - boardWidth.Value) + (4L * point.Y.Value);
}
