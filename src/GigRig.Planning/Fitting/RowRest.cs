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
        for (var set = 0; set < 1 << count; set++)
        {
            for (var first = 0; first < count; first++)
            {
                var best = set == 0 ? widths[things[first]] : int.MaxValue;
                for (var next = 0; next < count; next++)
                {
                    if ((set >> next & 1) == 1 && next != first)
                        best = Math.Min(best, distance[things[first], things[next]] + least[((set & ~(1 << next)) * count) + next]);
                }

                least[(set * count) + first] = best;
            }
        }
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
