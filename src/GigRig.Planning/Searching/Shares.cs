using GigRig.Planning.Choosing;

namespace GigRig.Planning.Searching;

/// <summary>
/// In what parts a thing that meets several needs is charged to them. Any parts that add up to one keep a table from overrating what a set takes; which parts say
/// most depends on what the table would choose. A thing it takes for one of its needs only, and so for part of what it costs, is charged more there; then the table
/// chooses again. This is fictitious play (Brown 1951, Robinson 1951): parts are the mean of the answers so far.
/// </summary>
internal sealed class Shares
{
    /// <summary>After so many rounds in vain the parts found are good enough.</summary>
    private const int MostInVain = 12;

    /// <summary>What was fitted to much the same is worth no more than so many rounds.</summary>
    private const int MostKept = 6;

    private readonly double[][] parts;
    private readonly int rounds;

    private Shares(double[][] parts, int rounds) => (this.parts, this.rounds) = (parts, rounds);

    public static Shares Equal(Agenda agenda) => new([.. agenda.NeedsOf.Select(steps => steps.Select(_ => 1.0 / steps.Length).ToArray())], 0);

    /// <summary>The same, but that these things are charged nothing.</summary>
    public Shares With(IEnumerable<int> given)
    {
        double[][] next = [.. parts];
        foreach (var thing in given)
            next[thing] = new double[next[thing].Length];
        return new(next, Math.Min(rounds, MostKept));
    }

    /// <summary>The parts with which the bound leaves least, of those looked at from these on.</summary>
    /// <param name="pieces">How finely the bound is counted meanwhile.</param>
    /// <param name="enough">Nothing more is gained by leaving less than this.</param>
    public (Shares Shares, long Most) Fitted(Agenda agenda, Bound bound, Bound? outlets, int pieces, int mostRounds, long enough)
    {
        var (best, now, least) = (this, this, long.MaxValue);
        if (bound.Most < 0)
            return (this, BoundTable.Never);
        for (int round = 0, inVain = 0; round < mostRounds && inVain < MostInVain && least > enough; round++, inVain++)
        {
            var room = new Room(agenda, bound, pieces, outlets, now);
            var most = room.Most(-1, -1);
            if (most < least)
                (best, least, inVain) = (now, most, 0);
            if (now.Towards(room.Chosen(), agenda) is not { } next)
                break;
            now = next;
        }

        return (best, least);
    }

    /// <summary>So much of each need of a thing, in whole numbers that add up to no more than the whole.</summary>
    public long[] Split(int thing, long whole)
    {
        var split = new long[parts[thing].Length];
        if (split.Length == 1)
        {
            split[0] = parts[thing][0] == 0 ? 0 : whole;
            return split;
        }

        if (Array.TrueForAll(parts[thing], part => part == 0))
            return split;
        var (sum, given) = (0.0, 0L);
        for (var i = 0; i < split.Length; i++)
        {
            sum += parts[thing][i];
            var upTo = i == split.Length - 1 ? whole : Math.Min(whole, (long)(whole * sum));
            split[i] = upTo - given;
            given = upTo;
        }

        return split;
    }

    /// <summary>A step towards charging in full where things were chosen; null where everything chosen was charged in full.</summary>
    /// <param name="chosen">For each step the thing chosen there; -1 for none.</param>
    private Shares? Towards(int[] chosen, Agenda agenda)
    {
        var far = 1.0 / (rounds + 2);
        double[][]? next = null;
        foreach (var thing in chosen.Where(t => t >= 0 && agenda.NeedsOf[t].Length > 1).Distinct())
        {
            var steps = agenda.NeedsOf[thing];
            var times = steps.Count(s => chosen[s] == thing);
            if (times == steps.Length || Array.TrueForAll(parts[thing], part => part == 0))
                continue;
            next ??= [.. parts];
            next[thing] = [.. parts[thing].Select((part, i) => ((1 - far) * part) + (chosen[steps[i]] == thing ? far / times : 0))];
        }

        return next is null ? null : new(next, rounds + 1);
    }
}
