namespace GigRig.Domain.Documents.Reading;

/// <summary>Finds what was probably meant by a mistyped name.</summary>
internal static class NearestName
{
    /// <summary>Longer ones are no slip of the finger, and comparing takes time that grows with the length.</summary>
    private const int LongestTyped = 60;

    /// <summary>The known name with the fewest letters changed; null where more than a third of them, and more than one, would be.</summary>
    public static string? Of(string typed, IEnumerable<string> known) =>
        typed.Length > LongestTyped
            ? null
            : known.Where(name => Changes(typed, name) <= Math.Max(1, Math.Max(typed.Length, name.Length) / 3)).MinBy(name => Changes(typed, name));

    /// <summary>Letters added, dropped, replaced or swapped with their neighbour (optimal string alignment).</summary>
    private static int Changes(string a, string b)
    {
        var table = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            table[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            table[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = table[i - 1, j - 1] + (Same(a[i - 1], b[j - 1]) ? 0 : 1);
                table[i, j] = Math.Min(replaced, 1 + Math.Min(table[i - 1, j], table[i, j - 1]));
                if (i > 1 && j > 1 && Same(a[i - 1], b[j - 2]) && Same(a[i - 2], b[j - 1]))
                    table[i, j] = Math.Min(table[i, j], table[i - 2, j - 2] + 1);
            }

        return table[a.Length, b.Length];
    }

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
