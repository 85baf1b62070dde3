namespace GigRig.Planning.Fitting;

/// <summary>What is left open along the width, looked at with depth: in any order; where most stand in a row, part by part of the room that things have between front and rear.</summary>
internal sealed class DepthSearch(Surface surface)
{
    /// <summary>How many times the nodes of a question all parts may take, half of them once it is told of all that is not deep on which side of the deep ones it stands.</summary>
    public const int NodesInParts = 8;

    /// <summary>After so many places along the width in vain there is one part more.</summary>
    public const int MostRefused = 24;

    /// <summary>Nodes for one order along the width, which either works at once or hardly ever; and for any order, before there are parts.</summary>
    private const int NodesAnOrder = 150;
    private const int NodesAPart = 30;

    /// <summary>What a node with depth takes in nodes along the width, roughly.</summary>
    private const int WorkAFitNode = 10;

    public Following Following { get; } = new();

    /// <summary>How much was done so far, in nodes along the width.</summary>
    public long Work { get; private set; }

    /// <summary>Whether most of them stand in one row.</summary>
    public bool IsMostlyRow(Stance[] turned) => 2 * turned.Count(way => 2 * way.Pose.Depth > surface.Depth) > turned.Length;

    /// <summary>Where they stand in the order they have at these places along the width; empty: nowhere so; null: open.</summary>
    public IReadOnlyList<Standing>? InOrder(Stance[] turned, int[] along, Clock clock)
    {
        var found = FitSearch.Decide(surface, turned, Following, NodesAnOrder, clock, out var used, along);
        Work += (long)WorkAFitNode * used;
        return found;
    }

    /// <param name="refused">Places along the width that did not work out; null where there are none.</param>
    /// <param name="left">How many nodes are left.</param>
    /// <returns>Where they stand; empty: proved that they cannot; null: open.</returns>
    public IReadOnlyList<Standing>? Decide(Stance[] turned, int[]? refused, ref int left, Clock clock) =>
        IsMostlyRow(turned) ? InParts(turned, refused, ref left, clock) : InAnyOrder(turned, left, ref left, clock);

    private IReadOnlyList<Standing>? InAnyOrder(Stance[] turned, int nodes, ref int left, Clock clock)
    {
        var found = FitSearch.Decide(surface, turned, Following, Math.Min(nodes, left), clock, out var used);
        left -= used;
        Work += (long)WorkAFitNode * used;
        return found;
    }

    /// <summary>
    /// Where something stands nearer to the front, or nearer to the rear, distances along the width are longer, and mostly that is a no. First it is told of all that is not deep whether
    /// it stands in front of what all deep ones cover, behind it, or neither; then something stands in the front half of its room or in the rear half, best something that would have
    /// stood behind or in front of another where it did not work out.
    /// </summary>
    /// <param name="isHalved">Whether something was halved already.</param>
    private IReadOnlyList<Standing>? InParts(Stance[] turned, int[]? refused, ref int left, Clock clock, bool isHalved = false)
    {
        var (one, parts) = Sides(turned);
        var found = InAnyOrder(turned, one < 0 && !isHalved ? left / 2 : NodesAPart, ref left, clock);
        if (found is not null || left <= 0 || clock.IsUp)
            return found;
        if (one < 0)
        {
            isHalved = true;
            one = Enumerable.Range(0, turned.Length).Where(IsTorn).DefaultIfEmpty(-1).MaxBy(Room);
            if (one < 0 || Room(one) == 0)
                one = Enumerable.Range(0, turned.Length).MaxBy(Room);
            if (Room(one) == 0)
                return InAnyOrder(turned, left, ref left, clock);
            parts = [turned[one].Halves.Front, turned[one].Halves.Rear];
        }

        var undecided = false;
        foreach (var part in parts)
        {
            Stance[] nearer = [.. turned.Select((way, i) => i == one ? part : way)];
            IReadOnlyList<Standing>? standings = null;
            int[]? places = null;
            var word = StripSearch.Decide(surface, nearer, Following, left, clock, along =>
            {
                standings = InOrder(nearer, places = along, clock);
                return standings is { Count: > 0 };
            }, out var used, MostRefused);
            left -= used;
            Work += used;
            if (word == StripSearch.Word.Open)
                standings = InParts(nearer, places, ref left, clock, isHalved);
            if (word != StripSearch.Word.No && standings is { Count: > 0 })
                return standings;
            undecided |= word != StripSearch.Word.No && standings is null;
        }

        return undecided ? null : [];

        int Room(int i) => i < 0 ? -1 : turned[i].LastY - turned[i].FirstY;
        bool IsTorn(int i) => refused is not null && Enumerable.Range(0, turned.Length)
            .Any(j => j != i && refused[i] < refused[j] + turned[j].Pose.Width && refused[j] < refused[i] + turned[i].Pose.Width);
    }

    /// <summary>Something not deep that may still stand on more than one side of the band that all deep bodies cover, or in it, and the ways to tell; -1 where there is none any more.</summary>
    private (int One, Stance[] Parts) Sides(Stance[] turned)
    {
        var deep = turned.Where(way => 2 * way.Pose.Depth > surface.Depth).ToArray();
        var (from, to) = (deep.Max(way => way.CoreFrom), deep.Min(way => way.CoreTo));
        for (var i = 0; i < turned.Length && from < to; i++)
        {
            var way = turned[i];
            if (2 * way.Pose.Depth > surface.Depth)
                continue;
            Stance[] parts = [.. new[] { way.Within(way.FirstY, from - way.Pose.Depth), way.Within(to, way.LastY), way.Within(from - way.Pose.Depth + 1, to - 1) }.OfType<Stance>()];
            if (parts.Length > 1)
                return (i, parts);
        }

        return (-1, []);
    }
}
