namespace GigRig.Planning.Fitting;

/// <summary>Whether the deep things still open, alone and with one shallow thing each, have an order that is short enough.</summary>
internal sealed class StripRests(StripThings things, int depth)
{
    private const int MostRow = 12;
    private const int MostShallow = 4;

    private readonly List<RowRest> rests = [];

    /// <summary>Works out the rests one after another, the cheaper first; false where one refutes at once.</summary>
    /// <param name="starts">Where each thing starts at least, with nothing put down.</param>
    public bool Begin(int[] starts)
    {
        int[] deep = [.. Enumerable.Range(0, things.Count).Where(i => 2 * things.Depths[i] > depth).Take(MostRow)];
        if (!Add(deep))
            return false;
        int[] shallow = [.. Enumerable.Range(0, things.Count).Where(i => 2 * things.Depths[i] <= depth)];
        if (shallow.Any(s => RowRest.NoOrderGoes(SideBySide([s, .. deep, .. shallow]), things.Distance, things.Widths, starts, things.Width)))
            return false;
        return deep.Length >= MostRow - 1 || shallow.Length > MostShallow || shallow.All(s => Add([.. deep, s]));

        bool Add(int[] row)
        {
            if (RowRest.NoOrderGoes(row, things.Distance, things.Widths, starts, things.Width))
                return false;
            if (RowRest.AnyOrderGoes(row, things.Distance, things.Widths, starts, things.Width))
                return true;
            rests.Add(new RowRest(row, things.Distance, things.Widths));
            return rests[^1].Suffices(0, starts, things.Width);
        }
    }

    /// <summary>The first of these, and of the others what can stand neither behind nor in front of any that is already there.</summary>
    private int[] SideBySide(int[] some)
    {
        var row = new List<int>(some.Length);
        foreach (var one in some)
        {
            if (row.All(other => other != one && things.Distance[one, other] >= things.Widths[one] && things.Distance[other, one] >= things.Widths[other]))
                row.Add(one);
        }

        return [.. row];
    }

    /// <param name="set">What is put down.</param>
    public bool Suffice(int set, int[] starts)
    {
        foreach (var rest in rests)
        {
            if (!rest.Suffices(set, starts, things.Width))
                return false;
        }

        return true;
    }
}
