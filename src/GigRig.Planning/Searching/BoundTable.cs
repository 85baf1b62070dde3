using System.Numerics;

namespace GigRig.Planning.Searching;

/// <summary>
/// The most that the needs from one of them on can still bring, for every room left: a knapsack of choices, solved from the last need back (Bellman 1957).
/// Room is counted twice: pieces of one bound, and outlets. A thing that meets several needs is paid for in parts, by the needs it would meet, so that what a
/// set is charged is never more than what it takes.
/// </summary>
internal sealed class BoundTable
{
    public const long Never = long.MinValue / 4;

    private readonly (long Stay, Charge[] Choices)[] steps;
    private readonly long[][] most;
    private readonly int rooms;
    private readonly int outlets;

    /// <param name="steps">For each need what it is worth to leave it as it is, and the choices.</param>
    public BoundTable(IReadOnlyList<(long Stay, Charge[] Choices)> steps, int room, int outlets)
    {
        (rooms, this.outlets) = (room + 1, outlets);
        this.steps = [.. steps.Select(step => (step.Stay, Undominated(step.Choices)))];
        most = new long[steps.Count + 1][];
        most[steps.Count] = new long[(outlets + 1) * rooms];
        for (var s = steps.Count - 1; s >= 0; s--)
            most[s] = Before(most[s + 1], this.steps[s].Stay, this.steps[s].Choices);
    }

    public long MostFrom(int step, long room, int outletsLeft) =>
        room < 0 || outletsLeft < 0 ? Never : most[step][(Math.Min(outletsLeft, outlets) * rooms) + (int)Math.Min(room, rooms - 1)];

    /// <summary>For each step the thing chosen on a way to the most of all; -1 where none is, or where there is no way.</summary>
    public int[] Chosen()
    {
        var chosen = new int[steps.Length];
        var (room, outlet) = (rooms - 1, outlets);
        for (var s = 0; s < steps.Length; s++)
        {
            chosen[s] = -1;
            var at = MostFrom(s, room, outlet);
            if (at <= Never || at == Math.Max(MostFrom(s + 1, room, outlet) + steps[s].Stay, Never))
                continue;
            var choice = steps[s].Choices.First(c => c.Room <= room && c.Outlets <= outlet && MostFrom(s + 1, room - c.Room, outlet - c.Outlets) + c.Gain == at);
            (chosen[s], room, outlet) = (choice.Thing, room - choice.Room, outlet - choice.Outlets);
        }

        return chosen;
    }

    private long[] Before(long[] after, long stay, Charge[] choices)
    {
        var best = new long[after.Length];
        for (var i = 0; i < best.Length; i++)
            best[i] = Math.Max(after[i] + stay, Never);
        foreach (var (gain, room, outlet, _) in choices)
        {
            for (var p = outlet; p <= outlets; p++)
            {
                var to = best.AsSpan((p * rooms) + Math.Min(room, rooms), Math.Max(0, rooms - room));
                var from = after.AsSpan((p - outlet) * rooms, to.Length);
                Raise(to, from, gain);
            }
        }

        return best;
    }

    /// <summary>To the most of what is there and what would be gained, several at a time: this is where making a table takes its time. Nothing here comes near what a number holds.</summary>
    private static void Raise(Span<long> to, ReadOnlySpan<long> from, long gain)
    {
        var many = Vector<long>.Count;
        var gains = new Vector<long>(gain);
        var q = 0;
        for (; q <= to.Length - many; q += many)
            Vector.Max(new Vector<long>(to[q..]), new Vector<long>(from[q..]) + gains).CopyTo(to[q..]);
        for (; q < to.Length; q++)
            to[q] = Math.Max(to[q], from[q] + gain);
    }

    private static Charge[] Undominated(Charge[] choices)
    {
        var sorted = (Charge[])choices.Clone();
        Array.Sort(sorted, (a, b) => a.Gain != b.Gain ? b.Gain.CompareTo(a.Gain) : a.Room != b.Room ? a.Room.CompareTo(b.Room) : a.Outlets != b.Outlets ? a.Outlets.CompareTo(b.Outlets) : a.Thing.CompareTo(b.Thing));
        var kept = new List<Charge>();
        foreach (var one in sorted)
        {
            var isNeeded = true;
            foreach (var other in kept)
                isNeeded &= other.Room > one.Room || other.Outlets > one.Outlets;
            if (isNeeded)
                kept.Add(one);
        }

        return [.. kept];
    }

    /// <summary>What it brings to take this thing at a step, and what it takes.</summary>
    internal readonly record struct Charge(long Gain, int Room, int Outlets, int Thing);
}
