using GigRig.Planning.Choosing;

namespace GigRig.Planning.Searching;

/// <summary>Which bounds are worth a table.</summary>
internal static class Rooms
{
    private const int MostRooms = 3;
    private const int MostSifted = 8;
    private const int MostOutlets = 30;

    /// <summary>How finely a bound is counted in its table.</summary>
    private const int MostPieces = 1024;
    private const int SomePieces = 128;
    private const int RoughPieces = 128;

    public static IEnumerable<Bound> BoundsOf(Question question, Clock clock) =>
        AreaBounds.Of(question).Concat(LineBounds.Of(question, clock)).Concat(OutletBounds.Of(question)).Concat(LimitBounds.Of(question));

    /// <summary>The bounds that leave least at the root: sifted roughly, without outlets, then more finely.</summary>
    public static Room[] Tightest(Agenda agenda, Bound[] bounds)
    {
        var outlets = bounds.FirstOrDefault(b => b.Weights.Max() <= 1 && b.Most <= MostOutlets);
        var others = bounds.Where(b => b != outlets).DistinctBy(b => $"{b.Most} {string.Join(',', b.Weights)}", StringComparer.Ordinal);
        var sifted = ByMost(others, RoughPieces, null).Take(MostSifted);
        var tightest = ByMost(sifted, SomePieces, outlets).Take(MostRooms).DefaultIfEmpty(outlets ?? new([], 0));
        return [.. tightest.Select(b => new Room(agenda, b, MostPieces, outlets))];

        IEnumerable<Bound> ByMost(IEnumerable<Bound> some, int pieces, Bound? with) => some.OrderBy(b => new Room(agenda, b, pieces, with).Most(-1, -1));
    }
}
