namespace GigRig.Domain.Rules;

/// <summary>How lists and counts read in a sentence.</summary>
public static class Wording
{
    /// <summary><c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    public static string Listed(this IEnumerable<string> items)
    {
        var all = items.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} and {all[^1]}";
    }

    /// <summary><c>1 rail</c>, <c>2 rails</c>.</summary>
    public static string Counted(this int count, string singular) => count == 1 ? $"1 {singular}" : $"{count} {singular}s";
}
