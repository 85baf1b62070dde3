using GigRig.Planning.Choosing;

namespace GigRig.Planning.Searching;

/// <summary>What one bound leaves room for, and at most what worth, at the node being looked at.</summary>
internal sealed class Room
{
    private readonly Agenda agenda;
    private readonly long scale;
    private readonly Bound bound;
    private readonly BoundTable table;
    private readonly Bound? outlets;

    /// <summary>What each thing is charged at each of its steps.</summary>
    private readonly BoundTable.Charge[][] charges;

    /// <summary>And what it is charged from each of its steps on, and at last nothing; worked out when first asked for.</summary>
    private readonly Credit[]?[] credits;
    private long left;
    private int outletsLeft;
    private Credit credit;

    /// <param name="pieces">How finely the bound is counted, at most.</param>
    /// <param name="outlets">Counted one by one beside the bound; null where they are not.</param>
    /// <param name="shares">In what parts a thing is charged to the needs it meets.</param>
    public Room(Agenda agenda, Bound bound, int pieces, Bound? outlets, Shares shares)
    {
        (this.agenda, this.bound, this.outlets) = (agenda, bound, outlets);
        scale = Math.Max(1, (bound.Most + pieces - 1) / pieces);
        charges = [.. Enumerable.Range(0, agenda.Things).Select(thing => ChargesOf(thing, shares))];
        credits = new Credit[agenda.Things][];
        left = bound.Most;
        outletsLeft = (int)(outlets?.Most ?? 0);
        table = new(
            [.. agenda.Steps.Select((step, s) => (
                Stay: step.IsMust && step.Base == 0 ? BoundTable.Never : step.Gain(agenda.Worth, step.Base),
                Choices: step.Options.Select(o => charges[o.Thing][Place(o.Thing, s)]).ToArray()))],
            (int)(bound.Most / scale),
            outletsLeft);
    }

    /// <summary>For each step the thing that the table would choose, from the root; -1 where it would leave the need as it is.</summary>
    public int[] Chosen() => table.Chosen();

    /// <summary>What the things taken were charged at this step is not still to come.</summary>
    public void Enter(int s, List<int> taken) => Pass(s, taken, -1);

    public void Leave(int s, List<int> taken) => Pass(s, taken, 1);

    public void Take(int thing, int s, int sign)
    {
        left -= sign * bound.Of(thing);
        outletsLeft -= sign * OutletsOf(thing);
        credit = credit.Plus(After(thing, s), sign);
    }

    /// <summary>The most that the needs after this one can bring, once this thing is taken too.</summary>
    public long Most(int s, int thing)
    {
        if (thing < 0)
            return credit.Gain + table.MostFrom(s + 1, left < 0 ? -1 : (left / scale) + credit.Room, outletsLeft + credit.Outlets);
        var with = credit.Plus(After(thing, s), 1);
        var room = left - bound.Of(thing);
        return with.Gain + table.MostFrom(s + 1, room < 0 ? -1 : (room / scale) + with.Room, outletsLeft - OutletsOf(thing) + with.Outlets);
    }

    private int OutletsOf(int thing) => (int)(outlets?.Of(thing) ?? 0);

    private int Place(int thing, int s) => Array.IndexOf(agenda.NeedsOf[thing], s);

    /// <summary>What the thing is charged at the steps after this one.</summary>
    private Credit After(int thing, int s)
    {
        var steps = agenda.NeedsOf[thing];
        var place = 0;
        while (place < steps.Length && steps[place] <= s)
            place++;
        return (credits[thing] ??= CreditsOf(charges[thing], thing))[place];
    }

    private void Pass(int s, List<int> taken, int sign)
    {
        foreach (var thing in taken)
        {
            if (agenda.Rating(thing, s) > 0)
                credit = credit.Plus(Credit.Of(this, thing, Place(thing, s)), sign);
        }
    }

    /// <summary>An outlet is charged whole, at the need that gains most.</summary>
    private BoundTable.Charge[] ChargesOf(int thing, Shares shares)
    {
        var steps = agenda.NeedsOf[thing];
        var (costs, rooms) = (shares.Split(thing, agenda.Costs[thing]), shares.Split(thing, bound.Of(thing) / scale));
        var made = new BoundTable.Charge[steps.Length];
        var main = 0;
        for (var i = 0; i < made.Length; i++)
        {
            var gain = agenda.Gain(thing, i);
            made[i] = new(gain - costs[i], (int)Math.Min(rooms[i], int.MaxValue / 2), 0, thing);
            main = gain > agenda.Gain(thing, main) ? i : main;
        }

        if (made.Length > 0)
            made[main] = made[main] with { Outlets = OutletsOf(thing) };
        return made;
    }

    private Credit[] CreditsOf(BoundTable.Charge[] parts, int thing)
    {
        var found = new Credit[parts.Length + 1];
        for (var i = parts.Length - 1; i >= 0; i--)
            found[i] = found[i + 1].Plus(Credit.Of(this, thing, i), 1);
        return found;
    }

    /// <summary>What was charged, and is given back.</summary>
    private readonly record struct Credit(long Gain, long Room, int Outlets)
    {
        public static Credit Of(Room room, int thing, int place)
        {
            var charge = room.charges[thing][place];
            return new(room.agenda.Gain(thing, place) - charge.Gain, charge.Room, charge.Outlets);
        }

        public Credit Plus(Credit other, int sign) => new(Gain + (sign * other.Gain), Room + (sign * other.Room), Outlets + (sign * other.Outlets));
    }
}
