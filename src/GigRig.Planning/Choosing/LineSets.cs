using GigRig.Planning.Fitting;

namespace GigRig.Planning.Choosing;

/// <summary>Lines along the board that bodies cannot avoid.</summary>
internal static class LineSets
{
    /// <summary>On a board of more rows than this, area says more than rows, and the rows cost more than they save.</summary>
    private const int MostLines = 8;

    /// <summary>For each way of standing the fewest lines that it must cross one of; the most common sets first.</summary>
    public static IEnumerable<int[]> Of(IEnumerable<Stance> stances, int middle) => stances
        .Select(s => For(s, middle))
        .Where(lines => lines.Length <= MostLines)
        .CountBy(lines => string.Join(',', lines))
        .OrderByDescending(set => set.Value)
        .ThenBy(set => set.Key, StringComparer.Ordinal)
        .Select(set => set.Key.Split(',').Select(int.Parse).ToArray());

    private static int[] For(Stance stance, int middle)
    {
        if (stance.CoreFrom < stance.CoreTo)
            return [Math.Clamp(middle, stance.CoreFrom, stance.CoreTo - 1)];
        var lines = new List<int> { stance.CoreTo - 1 };
        while (lines[^1] < stance.LastY)
            lines.Add(Math.Min(stance.LastY, lines[^1] + stance.Pose.Depth));
        return [.. lines];
    }
}
