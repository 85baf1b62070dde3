using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Arranging;

/// <summary>
/// Arranges, and of the layouts found on the way takes the one whose leads are shortest as they will lie, around bodies. While it searches the arranger measures
/// them straight, some thousand times quicker and never too long; that now and then puts two good layouts in the wrong order.
/// </summary>
internal sealed class RoutedArranger(RigProblem problem, Arrangement arrangement, Arranger arranger)
{
    internal const int MostCompared = 64;

    /// <summary>As <see cref="Arranger.Improve"/>: never worse than what it was given.</summary>
    public Standing[] Improve(Standing[] given, Clock clock, Action<Standing[]> found)
    {
        var last = new Queue<Standing[]>([given]);
        arranger.Improve(given, clock, better =>
        {
            last.Enqueue(better);
            if (last.Count > MostCompared)
                last.Dequeue();
            found(better);
        });

        // Among equals the last, which is the best measured straight; and where there is no time left.
        Standing[][] lastFirst = [.. last.Reverse()];
        return lastFirst.TakeWhile(_ => !clock.IsUp).MinBy(LeadsAround) ?? lastFirst[0];
    }

    private int LeadsAround(Standing[] layout)
    {
        var rig = arrangement.Stood(layout);
        var routes = new LeadRoutes(problem, rig);
        return Hops.Of(problem, rig).Sum(hop => routes.Of(hop)?.Length.Value ?? 0);
    }
}
