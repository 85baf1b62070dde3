using GigRig.Planning.Fitting;

namespace GigRig.Planning.Choosing;

/// <summary>Every way the candidates may stand on the surface, and the supply where it stands among them.</summary>
internal sealed class WaysToStand
{
    private readonly Surface surface;
    private readonly (Stance Way, Posture Posture)[][] each;

    public WaysToStand(Question question, TurningSearch turning)
    {
        surface = question.Surface;
        Supply = question.SupplyShape is { } shape ? turning.WaysOf(shape) : [];
        each = [.. question.Candidates.Select(c => Told(turning.WaysOf(c.Shape)))];
    }

    public int Things => each.Length;

    /// <summary>None where it does not stand among them.</summary>
    public Stance[] Supply { get; }

    public IEnumerable<Stance> All => each.SelectMany(ways => ways.Select(one => one.Way)).Concat(Supply).Distinct();

    /// <summary>Whether it is deeper than half the board: then no other such body can stand behind it.</summary>
    public bool IsDeep(Stance way) => 2 * way.Pose.Depth > surface.Depth;

    public IEnumerable<Stance> Of(int thing, Posture posture)
    {
        foreach (var (way, own) in each[thing])
        {
            if ((own & posture) != 0)
                yield return way;
        }
    }

    /// <summary>A bound in which each thing weighs what it weighs at least, standing like this; what cannot stand like this is not in the set.</summary>
    public Bound Bound(long most, Posture[] postures, Func<Stance, long> weight)
    {
        var forSupply = Supply.Select(weight).DefaultIfEmpty(0).Min();
        var weights = new long[each.Length];
        for (var thing = 0; thing < weights.Length; thing++)
        {
            var least = long.MaxValue;
            foreach (var (way, own) in each[thing])
            {
                if ((own & postures[thing]) != 0)
                    least = Math.Min(least, weight(way));
            }

            weights[thing] = least == long.MaxValue ? most + 1 : least;
        }

        return new(weights, most - forSupply);
    }

    private (Stance Way, Posture Posture)[] Told(Stance[] ways)
    {
        var deepest = ways.Select(way => way.Pose.Depth).DefaultIfEmpty(0).Max();
        return [.. ways.Select(way => (way, IsDeep(way) && way.Pose.Depth == deepest ? Posture.InRow : Posture.Otherwise))];
    }
}
