using GigRig.Planning.Choosing;

namespace GigRig.Planning.Searching;

/// <summary>What one bound leaves room for, and at most what worth, at the node being looked at.</summary>
internal sealed class Room
{
    private readonly Agenda agenda;
    private readonly long scale;
    private readonly long most;
    private readonly Bound bound;
    private readonly int[] main;
    private readonly BoundTable table;
    private readonly bool countsOutlets;
    private readonly Bound? outlets;
    private long left;
    private int outletsLeft;
    private long roomCredit;
    private int outletCredit;
    private long gainCredit;

    /// <param name="pieces">How finely the bound is counted, at most.</param>
    public Room(Agenda agenda, Bound bound, int pieces, Bound? outlets)
    {
        (this.agenda, this.bound) = (agenda, bound);
        most = bound.Most;
        scale = Math.Max(1, (most + pieces - 1) / pieces);
        countsOutlets = outlets is not null;
        this.outlets = outlets;
        main = new int[agenda.Things];
        Array.Fill(main, -1);
        for (var s = agenda.Steps.Length - 1; s >= 0; s--)
        {
            foreach (var option in agenda.Steps[s].Options)
            {
                if (main[option.Thing] < 0 || agenda.Steps[s].Gain(agenda.Worth, option.Rating) >= agenda.Steps[main[option.Thing]].Gain(agenda.Worth, agenda.Rating(option.Thing, main[option.Thing])))
                    main[option.Thing] = s;
            }
        }

        left = most;
        outletsLeft = (int)(outlets?.Most ?? 0);
        table = new(
            [.. agenda.Steps.Select((step, s) => (
                Stay: step.IsMust && step.Base == 0 ? BoundTable.Never : step.Gain(agenda.Worth, step.Base),
                Choices: step.Options.Select(o => new BoundTable.Charge(step.Gain(agenda.Worth, o.Rating) - GainShare(o.Thing), (int)RoomShare(o.Thing), OutletShare(o.Thing, s))).ToArray()))],
            (int)(most / scale),
            outletsLeft);
    }

    private long GainShare(int thing) => agenda.Costs[thing] / agenda.Uses[thing];

    private long RoomShare(int thing) => Math.Min(bound.Of(thing) / agenda.Uses[thing] / scale, int.MaxValue / 2);

    private int OutletShare(int thing, int s) => countsOutlets && main[thing] == s ? (int)outlets!.Of(thing) : 0;

    /// <summary>What the things taken were charged at this step is not still to come.</summary>
    public void Enter(int s, List<int> taken) => Pass(s, taken, -1);

    public void Leave(int s, List<int> taken) => Pass(s, taken, 1);

    private void Pass(int s, List<int> taken, int sign)
    {
        foreach (var thing in taken)
        {
            if (agenda.Rating(thing, s) == 0)
                continue;
            gainCredit += sign * GainShare(thing);
            roomCredit += sign * RoomShare(thing);
            outletCredit += sign * OutletShare(thing, s);
        }
    }

    public void Take(int thing, int s, int sign)
    {
        left -= sign * bound.Of(thing);
        if (countsOutlets)
            outletsLeft -= sign * (int)outlets!.Of(thing);

        for (var later = s + 1; later < agenda.Steps.Length; later++)
        {
            if (agenda.Rating(thing, later) == 0)
                continue;
            gainCredit += sign * GainShare(thing);
            roomCredit += sign * RoomShare(thing);
            outletCredit += sign * OutletShare(thing, later);
        }
    }

    /// <summary>The most that the needs after this one can bring, once this thing is taken too.</summary>
    public long Most(int s, int thing)
    {
        if (thing < 0)
            return gainCredit + table.MostFrom(s + 1, left < 0 ? -1 : (left / scale) + roomCredit, outletsLeft + outletCredit);
        Take(thing, s, 1);
        var found = gainCredit + table.MostFrom(s + 1, left < 0 ? -1 : (left / scale) + roomCredit, outletsLeft + outletCredit);
        Take(thing, s, -1);
        return found;
    }
}
