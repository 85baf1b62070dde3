namespace GigRig.Web.Sheets;

/// <summary>Numbers in running words.</summary>
internal static class Numbers
{
    private static readonly string[] Units = ["V", "mA", "W"];

    /// <summary>Keeps each number on one line with its unit.</summary>
    public static string Whole(string words) =>
        Units.Aggregate(words, (text, unit) => text.Replace($" {unit}", $"\u00a0{unit}", StringComparison.Ordinal));
}
