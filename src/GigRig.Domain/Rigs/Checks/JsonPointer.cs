namespace GigRig.Domain.Rigs.Checks;

/// <summary>Builds JSON Pointers (RFC 6901).</summary>
internal static class JsonPointer
{
    public static string Member(this string pointer, string name) =>
        $"{pointer}/{name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}";

    public static string Item(this string pointer, int index) => $"{pointer}/{index}";
}
