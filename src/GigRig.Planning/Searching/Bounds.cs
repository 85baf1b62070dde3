using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Searching;

/// <summary>What every set keeps that stands and is fed, and which of that says most. Worked out once; what depends on how things stand, for each way they are to stand.</summary>
internal sealed class Bounds
{
    private const int MostSifted = 8;
    private const int MostTight = 3;
    private const int MostOutlets = 30;
    private const int RoughPieces = 128;

    private readonly Agenda agenda;
    private readonly Clock clock;
    private readonly Bound[] single;
    private readonly Bound[][] tight;
    private readonly RowBounds? row;
    private readonly ColumnBounds? columns;

    public Bounds(Question question, Agenda agenda, Fitter fitter, Clock clock)
    {
        (this.agenda, this.clock) = (agenda, clock);
        single =
        [
            .. AreaBounds.Of(question).Concat(LineBounds.Of(question, clock)).Concat(OutletBounds.Of(question)).Concat(LimitBounds.Of(question))
                .TakeWhile(_ => !clock.IsUp).Where(b => b.Binds).DistinctBy(b => $"{b.Most} {string.Join(',', b.Weights)}", StringComparer.Ordinal),
        ];
        Ways = new(question, fitter.Turning);
        if (Ways.All.Any(Ways.IsDeep))
            (row, columns) = (new(Ways, question.Surface, fitter.Turning.Following), new(Ways, question.Surface, fitter.Turning.Following));
        Anyhow = [.. Enumerable.Repeat(Posture.Any, Ways.Things)];
        CanHold = single.All(b => b.Most >= 0);
        (tight, Outlets) = CanHold ? Tightest() : ([], null);
    }

    /// <summary>False where not even the empty set keeps them.</summary>
    public bool CanHold { get; }

    public WaysToStand Ways { get; }

    /// <summary>Things that stand in the row and would take many others their gaps.</summary>
    public int[] Lenient => row?.Lenient ?? [];

    /// <summary>Everything standing any way.</summary>
    public Posture[] Anyhow { get; }

    /// <summary>A bound on outlets that is worth counting beside any other; null where none is.</summary>
    public Bound? Outlets { get; }

    /// <summary>Groups of bounds, of each of which a set keeps one.</summary>
    /// <param name="otherwise">Things in the set that stand otherwise than in the row.</param>
    public Bound[][] Of(Posture[] postures, IEnumerable<int> otherwise) => [.. single.Select(b => new[] { b }), .. OfPostures(postures, otherwise)];

    /// <summary>What the row says, and the row beside these things.</summary>
    public Bound[][] Row(Posture[] postures, IEnumerable<int> otherwise) => row is null ? [] : [row.For(postures), .. otherwise.Select(thing => row.Beside(thing, postures))];

    /// <summary>Those of them that are worth a table.</summary>
    public Bound[][] WorthTables(Posture[] postures, IEnumerable<int> otherwise)
    {
        Bound[][] all = [.. OfPostures(postures, otherwise), .. tight];
        return all.Length == 0 ? [[Outlets ?? new([], 0)]] : all;
    }

    private Bound[][] OfPostures(Posture[] postures, IEnumerable<int> otherwise) => columns is null ? [] : [.. Row(postures, otherwise), [columns.For(postures)]];

    /// <summary>The bounds that leave least at the root. Outlets are counted beside only where that says more.</summary>
    private (Bound[][] Tight, Bound? Outlets) Tightest()
    {
        var equal = Shares.Equal(agenda);
        var outlets = single.FirstOrDefault(b => b.Weights.Max() <= 1 && b.Most <= MostOutlets);
        Bound[][] groups = [.. single.Where(b => b != outlets).Select(b => new[] { b }), .. row is null ? [] : new[] { row.For(Anyhow) }];
        var sifted = groups.OrderBy(g => Rough(g, null)).Take(MostSifted).ToArray();
        if (outlets is not null && sifted.Length > 0 && sifted.Min(g => Rough(g, outlets)) == sifted.Min(g => Rough(g, null)))
            outlets = null;
        return ([.. sifted.Where(g => row is null || g.Length == 1).OrderBy(g => Rough(g, outlets)).Take(MostTight)], outlets);

        long Rough(Bound[] group, Bound? with) => clock.IsUp ? 0 : group.Max(b => new Room(agenda, b, RoughPieces, with, equal).Most(-1, -1));
    }
}
