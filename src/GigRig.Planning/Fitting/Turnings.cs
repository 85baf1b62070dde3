namespace GigRig.Planning.Fitting;

/// <summary>The ways of turning many things: thing after thing, the largest first, and only what is not refuted already goes on.</summary>
internal sealed class Turnings(Surface surface, Func<Stance[], bool> isRefuted)
{
    private const int MostKept = 1024;

    /// <summary>Null where too many are left.</summary>
    /// <param name="ways">Of each thing; the same object for things alike.</param>
    public IReadOnlyList<Stance[]>? Of(Stance[][] ways)
    {
        if (ways.Any(w => w.Length == 0))
            return [];
        int[] order = [.. Enumerable.Range(0, ways.Length).OrderByDescending(i => ways[i][0].Pose.Width * ways[i][0].Pose.Depth).ThenBy(i => i)];
        List<int[]> kept = [[]];
        for (var count = 0; count < order.Length; count++)
        {
            var thing = order[count];
            var like = Array.FindLastIndex(order, Math.Max(0, count - 1), count, i => ReferenceEquals(ways[i], ways[thing]));
            var choices = count == 0 && IsSameOver(ways) ? 1 : ways[thing].Length;
            kept =
            [
                .. kept.SelectMany(_ => Enumerable.Range(0, choices), (turned, way) => (int[])[.. turned, way])
                    .Where(turned => like < 0 || turned[like] <= turned[^1])
                    .Where(turned => turned.Length < 2 || !isRefuted([.. turned.Select((way, i) => ways[order[i]][way])])),
            ];
            if (kept.Count > MostKept)
                return null;
        }

        return [.. kept.Select(turned => (Stance[])[.. ways.Select((w, i) => w[turned[Array.IndexOf(order, i)]])])];
    }

    /// <summary>Whether the board with along and across changed over is the same board, for things that may all be turned: then one of them need be turned one way only.</summary>
    private bool IsSameOver(Stance[][] ways) => surface.Width == surface.Depth && surface.IsPlain && surface.KeepOuts.Length == 0
        && ways.All(w => w.Length == 2 && w.All(s => s.Pose.Pieces.Length == 1 && s.Pose.Spot is null) && w[0].Pose.Width == w[1].Pose.Depth && w[0].Pose.Depth == w[1].Pose.Width);
}
