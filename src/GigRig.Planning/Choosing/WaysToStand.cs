using GigRig.Planning.Fitting;

namespace GigRig.Planning.Choosing;

/// <summary>Every way the candidates may stand on the surface, and the supply where it stands among them.</summary>
internal sealed class WaysToStand(Question question, TurningSearch turning)
{
    private readonly Stance[][] each = [.. question.Candidates.Select(c => turning.WaysOf(c.Shape))];

    public int Things => each.Length;

    /// <summary>None where it does not stand among them.</summary>
    public Stance[] Supply { get; } = question.SupplyShape is { } shape ? turning.WaysOf(shape) : [];

    public Stance[] All => field ??= [.. each.SelectMany(ways => ways).Concat(Supply).Distinct()];

    /// <summary>The deepest ways of each thing, where these are deeper than half the board.</summary>
    public Stance[][] InRow => field ??= [.. each.Select(ways => ways.Where(way => IsDeep(way) && way.Pose.Depth == ways.Max(w => w.Pose.Depth)).ToArray())];

    /// <summary>Whether it is deeper than half the board: then no other such body can stand behind it.</summary>
    public bool IsDeep(Stance way) => 2 * way.Pose.Depth > question.Surface.Depth;

    public IEnumerable<Stance> Of(int thing, Posture posture) => each[thing].Where(way => Is(way, thing, posture));

    /// <summary>A bound in which each thing weighs what it weighs at least, standing like this; what cannot stand like this is not in the set.</summary>
    public Bound Bound(long most, Posture[] postures, Func<Stance, long> weight)
    {
        var forSupply = Supply.Select(weight).DefaultIfEmpty(0).Min();
        var weights = new long[each.Length];
        for (var thing = 0; thing < weights.Length; thing++)
        {
            var least = long.MaxValue;
            foreach (var way in each[thing])
            {
                if (Is(way, thing, postures[thing]))
                    least = Math.Min(least, weight(way));
            }

            weights[thing] = least == long.MaxValue ? most + 1 : least;
        }

        return new(weights, most - forSupply);
    }

    private bool Is(Stance way, int thing, Posture posture) => posture == Posture.Any || InRow[thing].Contains(way) == (posture == Posture.InRow);
}
