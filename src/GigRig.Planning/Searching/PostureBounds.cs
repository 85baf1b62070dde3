using GigRig.Planning.Choosing;

namespace GigRig.Planning.Searching;

/// <summary>What sets can be worth at most in which things stand as is decided or open.</summary>
internal sealed class PostureBounds
{
    /// <summary>So many bounds are fitted, and looked up where a set is looked for.</summary>
    private const int MostTables = 3;

    /// <summary>How finely a bound is counted: on a row of deep bodies by the millimetre, mostly; and else, or while shares are fitted.</summary>
    private const int RowPieces = 500;
    private const int RoughPieces = 128;

    /// <summary>So many times fewer rounds of fitting shares for what does not say most.</summary>
    private const int Fewer = 3;

    /// <summary>A table takes as long as a node for each so many numbers in it, roughly.</summary>
    private const long NumbersANode = 20_000;

    private readonly Agenda agenda;
    private readonly Bounds bounds;
    private readonly SetSearch sets;
    private readonly int[] pins;
    private readonly bool areRows;
    private readonly Clock clock;
    private readonly int nodesATable;

    public PostureBounds(Agenda agenda, Bounds bounds, SetSearch sets, int[] pins, bool areRows, Clock clock)
    {
        (this.agenda, this.bounds, this.sets, this.pins, this.areRows, this.clock) = (agenda, bounds, sets, pins, areRows, clock);
        nodesATable = 1 + (int)(agenda.Steps.Sum(step => (long)step.Options.Length) * (1 + (bounds.Outlets?.Most ?? 0)) * (areRows ? RowPieces : RoughPieces) / NumbersANode);
    }

    /// <summary>What is in every such set.</summary>
    public int[] Given(Postures postures) => [.. pins.Concat(postures.Things).Distinct()];

    /// <summary>At most how much any set is worth that stands like this, by a glance at the row.</summary>
    public Postures Glanced(Postures postures)
    {
        var given = Given(postures);
        var least = long.MaxValue;

        // The row beside the last of them first, as that is a single table and mostly says enough.
        foreach (var group in bounds.Row(postures.Each(bounds.Ways.Things, bounds.Lenient), postures.Otherwise.TakeLast(1)).Reverse().TakeWhile(_ => sets.Beats(Known(postures, given, least).Most)))
        {
            var most = BoundTable.Never;
            for (var b = 0; b < group.Length && most < least; b++)
                most = Math.Max(most, Fitted(group[b], postures.Shares[b], given, 1).Most);
            least = Math.Min(least, most);
        }

        return Known(postures, given, least);
    }

    /// <summary>The same by all bounds, with the shares of those fitted that say most; no further than until it is plain that nothing better stands like this.</summary>
    public Postures Examined(Postures postures, int rounds)
    {
        var given = Given(postures);
        var groups = new List<Fit[]>();
        foreach (var group in bounds.WorthTables(postures.Each(bounds.Ways.Things, bounds.Lenient), postures.Otherwise))
        {
            Fit[] fits = [.. group.Select((bound, b) => Fitted(bound, postures.Shares[b], given, 1))];
            if (!IsHopeful(fits))
                return Known(postures, given, MostOf(fits));
            groups.Add(fits);
        }

        Fit[][] kept = [.. groups.OrderBy(MostOf).Take(MostTables)];
        for (var place = 0; place < kept.Length; place++)
        {
            kept[place] = Sharpened(kept[place], given, place == 0 || postures.IsAnyhow ? rounds : rounds / Fewer);
            if (!IsHopeful(kept[place]))
                return Known(postures, given, MostOf(kept[place]));
        }

        kept = [.. kept.OrderBy(MostOf)];
        return Known(postures, given, MostOf(kept[0])) with
        {
            Tables = [.. kept.Select(fits => fits.Select(fit => (fit.Bound, fit.Shares)).ToArray())],
            Shares = [.. kept[0].Select(fit => fit.Shares), .. kept[0].Length == 1 ? [kept[0][0].Shares] : Array.Empty<Shares>()],
        };

        bool IsHopeful(Fit[] fits) => sets.Beats(Known(postures, given, MostOf(fits)).Most);
    }

    /// <summary>Of bounds of which a set keeps one, that which leaves most is fitted first: the others matter only where they then leave more.</summary>
    private Fit[] Sharpened(Fit[] fits, int[] given, int rounds)
    {
        var sharp = (Fit[])fits.Clone();
        var least = BoundTable.Never;
        foreach (var b in Enumerable.Range(0, fits.Length).OrderByDescending(b => fits[b].Most).TakeWhile(b => fits[b].Most > least))
        {
            if (Fitted(fits[b].Bound, fits[b].Shares, given, rounds) is var fitted && fitted.Most < fits[b].Most)
                sharp[b] = fitted;
            least = Math.Max(least, sharp[b].Most);
        }

        return sharp;
    }

    private static long MostOf(Fit[] fits) => fits.Max(fit => fit.Most);

    private Fit Fitted(Bound bound, Shares shares, int[] given, int rounds)
    {
        sets.Count(rounds * nodesATable);
        var outlets = bounds.Outlets?.With(given);
        if (outlets?.Most < 0)
            return new(bound, shares, BoundTable.Never);
        var enough = sets.Beaten - agenda.Unhosted + given.Sum(thing => agenda.Costs[thing]);
        var (fitted, left) = (shares.With(given), bound.With(given));

        // Shares that are fitted to a rough table are nearly as good.
        if (rounds > 1 && !clock.IsUp)
            fitted = fitted.Fitted(agenda, left, outlets, RoughPieces, rounds, enough).Shares;
        return new(bound, fitted, fitted.Fitted(agenda, left, outlets, areRows ? RowPieces : RoughPieces, 1, enough).Most);
    }

    private Postures Known(Postures postures, int[] given, long most) =>
        most == long.MaxValue ? postures : postures with { Most = Math.Min(postures.Most, Math.Max(most, BoundTable.Never) + agenda.Unhosted - given.Sum(thing => agenda.Costs[thing])) };

    /// <summary>A bound, the shares fitted to it, and the most that a set can be worth that keeps it.</summary>
    private readonly record struct Fit(Bound Bound, Shares Shares, long Most);
}
