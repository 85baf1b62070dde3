using GigRig.Domain.Gear;

namespace GigRig.Planning.Fitting;

/// <summary>The board as the fitting search sees it, in whole millimetres.</summary>
internal sealed class Surface
{
    /// <summary>Least overlap of a body with a rail for it to bear there; the rule in the Domain is the judge.</summary>
    private const int LeastBearing = 10;

    private readonly (int From, int To)[] rails;
    private readonly Dictionary<int, IReadOnlyList<(int From, int To)>> stands = [];

    public Surface(Board board, int switchSpacing)
    {
        Width = board.Width.Value;
        Depth = board.Depth.Value;
        SwitchSpacing = switchSpacing;
        PlugSpace = Box.Of(board.PlugSpace);
        KeepOuts = [.. board.KeepOuts.Select(Box.Of)];
        Key = $"{Width} {Depth} {SwitchSpacing} {PlugSpace} {string.Join(' ', KeepOuts)} {string.Join(' ', board.Rails)}";
        rails = [.. board.Rails.Select(r => (r.From.Value, r.To.Value)).Order()];
    }

    private Surface(Surface other)
    {
        (Width, Depth) = (other.Depth, other.Width);
        PlugSpace = other.PlugSpace.Across();
        KeepOuts = [.. other.KeepOuts.Select(k => k.Across())];
        Key = $"across {other.Key}";
        rails = [];
    }

    /// <summary>The same with along and across changed over, without rails and without distances between foot switches: whatever does not stand here cannot stand there.</summary>
    public Surface Across() => new(this);

    /// <summary>On surfaces with equal keys the same things can stand.</summary>
    public string Key { get; }

    public int Width { get; }

    public int Depth { get; }

    public int SwitchSpacing { get; }

    /// <summary>Where plugs may be: the board grown by its overhang.</summary>
    public Box PlugSpace { get; }

    public Box[] KeepOuts { get; }

    public bool IsPlain => rails.Length == 0;

    /// <summary>Whether a body of this depth stands without rocking with its front edge at <paramref name="y"/>.</summary>
    public bool Bears(int y, int depth)
    {
        if (rails.Length == 0)
            return true;
        var bearings = 0;
        var first = int.MaxValue;
        var last = int.MinValue;
        foreach (var (from, to) in rails)
        {
            var start = Math.Max(y, from);
            var end = Math.Min(y + depth, to);
            if (end - start == depth)
                return true;
            if (end - start < Math.Min(LeastBearing, to - from))
                continue;
            bearings++;
            first = Math.Min(first, start);
            last = Math.Max(last, end);
        }

        var twiceMiddle = (2 * y) + depth;
        return bearings >= 2 && 2 * first <= twiceMiddle && twiceMiddle <= 2 * last;
    }

    /// <summary>The front-edge positions a body of this depth may take, as closed intervals.</summary>
    public IReadOnlyList<(int From, int To)> StandsAt(int depth)
    {
        if (!stands.TryGetValue(depth, out var spans))
            stands[depth] = spans = FindStands(depth);
        return spans;
    }

    private List<(int From, int To)> FindStands(int depth)
    {
        if (IsPlain)
            return depth <= Depth ? [(0, Depth - depth)] : [];
        var spans = new List<(int From, int To)>();
        for (var y = 0; y <= Depth - depth; y++)
        {
            if (!Bears(y, depth))
                continue;
            if (spans.Count > 0 && spans[^1].To == y - 1)
                spans[^1] = (spans[^1].From, y);
            else
                spans.Add((y, y));
        }

        return spans;
    }
}
