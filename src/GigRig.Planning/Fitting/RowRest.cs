using System.Numerics;

namespace GigRig.Planning.Fitting;

/// <summary>
/// For some of the things on a board: how far beyond the start of one of them the others reach at least, one starting after another (Held and Karp 1962).
/// </summary>
internal sealed class RowRest
{
    private readonly int[] things;
    private readonly int[] least;

    /// <param name="distance">From the start of each thing to the start of another after it, at least.</param>
    public RowRest(int[] things, int[,] distance, int[] widths)
    {
        this.things = things;
        var count = things.Length;
        least = new int[(1 << count) * count];
        var between = new int[count * count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < count; j++)
                between[(i * count) + j] = distance[things[i], things[j]];
            least[i] = widths[things[i]];
        }

        for (var set = 1; set < 1 << count; set++)
        {
            for (var first = 0; first < count; first++)
            {
                if ((set >> first & 1) == 1)
                    continue;
                var best = int.MaxValue;
                for (var rest = set; rest != 0; rest &= rest - 1)
                {
                    var next = BitOperations.TrailingZeroCount(rest);
                    best = Math.Min(best, between[(first * count) + next] + least[((set & ~(1 << next)) * count) + next]);
                }

                least[(set * count) + first] = best;
            }
        }
    }

    /// <summary>Whether no order of them at all is longer than this; false where that takes more than a glance.</summary>
    public static bool AnyOrderGoes(int[] things, int[,] distance, int[] widths, int[] starts, int width)
    {
        var (first, all) = (0, 0);
        foreach (var i in things)
        {
            first = Math.Max(first, starts[i]);
            var farthest = widths[i];
            foreach (var j in things)
                farthest = Math.Max(farthest, distance[i, j]);
            all += farthest;
        }

        return first + all <= width;
    }

    /// <summary>Whether every order of them is longer than this; false where that takes more than a glance.</summary>
    public static bool NoOrderGoes(int[] things, int[,] distance, int[] widths, int[] starts, int width)
    {
        // Cut the order anywhere: what comes before the cut is charged up to the next, what comes after it from the one before.
        var (first, all, lesser, most, least) = (int.MaxValue, 0, 0, 0, int.MaxValue);
        foreach (var i in things)
        {
            first = Math.Min(first, starts[i]);
            var (next, before) = (int.MaxValue, int.MaxValue);
            foreach (var j in things)
            {
                if (j == i)
                    continue;
                next = Math.Min(next, distance[i, j]);
                before = Math.Min(before, distance[j, i] - widths[j] + widths[i]);
            }

            // The last of them is followed by none, or that at the cut: it counts with its width instead.
            var both = Math.Min(next, before);
            (all, most) = (all + next, Math.Max(most, next - widths[i]));
            (lesser, least) = (lesser + both, Math.Min(least, both - widths[i]));
        }

        return things.Length > 1 && first + Math.Max(all - most, lesser - least) > width;
    }

    /// <summary>One of them comes next; from where it can start the rest must go onto the board.</summary>
    public bool Suffices(int put, int[] starts, int width)
    {
        var open = 0;
        for (var i = 0; i < things.Length; i++)
            open |= (put >> things[i] & 1) == 0 ? 1 << i : 0;
        if (open == 0)
            return true;
        for (var i = 0; i < things.Length; i++)
        {
            if ((open >> i & 1) == 1 && starts[things[i]] + least[((open & ~(1 << i)) * things.Length) + i] <= width)
                return true;
        }

        return false;
    }
}
