using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Searching;

/// <summary>The bounds that every set keeps, and tables of those that say most.</summary>
internal sealed class Rooms
{
    private const int MostRooms = 3;
    private const int MostSifted = 8;
    private const int MostOutlets = 30;

    /// <summary>How finely a bound is counted in its table: as finely as so much work allows, within these.</summary>
    private const long MostWork = 1_000_000;
    private const int LeastPieces = 1024;
    private const int MostPieces = 1 << 16;
    private const int RoughPieces = 128;

    private readonly Agenda agenda;
    private readonly Clock clock;

    /// <summary>Of each of these groups of bounds a set keeps one.</summary>
    private readonly Bound[][] bounds;
    private readonly Room[][] rooms;
    private readonly long[][] left;

    public Rooms(Question question, Agenda agenda, TurningSearch turning, Clock clock)
    {
        (this.agenda, this.clock) = (agenda, clock);
        var row = RowBounds.Of(question, turning);
        Bound[] single =
        [
            .. AreaBounds.Of(question).Concat(LineBounds.Of(question, clock)).Concat(OutletBounds.Of(question)).Concat(LimitBounds.Of(question))
                .TakeWhile(_ => !clock.IsUp).Where(b => b.Binds).DistinctBy(b => $"{b.Most} {string.Join(',', b.Weights)}", StringComparer.Ordinal),
        ];
        bounds = [.. single.Select(b => new[] { b }), .. row.Length == 0 ? [] : new[] { row }];
        left = [.. bounds.Select(group => group.Select(b => b.Most).ToArray())];
        rooms = bounds.Any(group => group.All(b => b.Most < 0)) ? [] : [.. Tightest(single, row)];
        Admits = rooms.Length > 0;
    }

    /// <summary>False where not even the empty set keeps all bounds.</summary>
    public bool Admits { get; }

    /// <summary>The most that the needs after this step can bring, once this thing is taken too; -1 for none.</summary>
    public long Most(int s, int thing)
    {
        var least = long.MaxValue;
        foreach (var group in rooms)
        {
            var most = long.MinValue;
            foreach (var room in group)
                most = Math.Max(most, room.Most(s, thing));
            least = Math.Min(least, most);
        }

        return least;
    }

    public void Enter(int s, List<int> taken)
    {
        foreach (var room in rooms.SelectMany(r => r))
            room.Enter(s, taken);
    }

    public void Leave(int s, List<int> taken)
    {
        foreach (var room in rooms.SelectMany(r => r))
            room.Leave(s, taken);
    }

    /// <summary>Whether every bound still holds with this thing.</summary>
    public bool Fits(int thing)
    {
        for (var g = 0; g < bounds.Length; g++)
        {
            var fits = false;
            for (var b = 0; b < bounds[g].Length && !fits; b++)
                fits = bounds[g][b].Of(thing) <= left[g][b];
            if (!fits)
                return false;
        }

        return true;
    }

    public void Take(int thing, int s, int sign)
    {
        for (var g = 0; g < bounds.Length; g++)
        {
            for (var b = 0; b < bounds[g].Length; b++)
                left[g][b] -= sign * bounds[g][b].Of(thing);
        }

        foreach (var room in rooms.SelectMany(r => r))
            room.Take(thing, s, sign);
    }

    /// <summary>The row and the bounds that leave least at the root, sifted roughly first. Outlets are counted beside only where that says more.</summary>
    private IEnumerable<Room[]> Tightest(Bound[] single, Bound[] row)
    {
        var equal = Shares.Equal(agenda);
        var outlets = single.FirstOrDefault(b => b.Weights.Max() <= 1 && b.Most <= MostOutlets);
        var others = single.Where(b => b != outlets).Select(b => (Bound[])[b]);
        var sifted = ByMost(others, null).Take(MostSifted).Concat(row.Length == 0 ? [] : [row]).ToArray();
        if (outlets is not null && sifted.Length > 0 && sifted.Min(g => Rough(g, outlets)) == sifted.Min(g => Rough(g, null)))
            outlets = null;
        var choices = Math.Max(1, agenda.Steps.Sum(step => step.Options.Length));
        var pieces = (int)Math.Clamp(MostWork / choices / (1 + (outlets?.Most ?? 0)), LeastPieces, MostPieces);
        return ByMost(sifted, outlets).Take(MostRooms).DefaultIfEmpty([outlets ?? new([], 0)])
            .Select(group => group.Select(b => clock.IsUp ? new Room(agenda, b, RoughPieces, outlets, equal) : new Room(agenda, b, pieces, outlets, Shares.For(agenda, b, RoughPieces, outlets))).ToArray());

        IEnumerable<Bound[]> ByMost(IEnumerable<Bound[]> some, Bound? with) => some.OrderBy(group => Rough(group, with));
        long Rough(Bound[] group, Bound? with) => clock.IsUp ? 0 : group.Max(b => new Room(agenda, b, RoughPieces, with, equal).Most(-1, -1));
    }
}
