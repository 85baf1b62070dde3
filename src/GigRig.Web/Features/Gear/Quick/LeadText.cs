using System.Globalization;
using System.Text.RegularExpressions;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>Leads in a few words: <c>15 cm</c> or <c>6 x 15 cm</c>, with plugs that are <c>angled</c> or <c>straight to angled</c>.</summary>
public static partial class LeadText
{
    private static readonly Dictionary<string, PlugShape> Shapes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["straight"] = PlugShape.Straight,
        ["angled"] = PlugShape.Angled,
        ["angle"] = PlugShape.Angled,
        ["slim"] = PlugShape.Slim,
        ["flat"] = PlugShape.Slim,
    };

    /// <summary>How many there are, and the length of each.</summary>
    /// <param name="defaultUnit">Meant where the text names none.</param>
    /// <param name="count">1 where the text does not say.</param>
    /// <param name="error">A sentence that quotes the text and says what to type; empty where all is well.</param>
    public static bool TryParse(string? text, LengthUnit defaultUnit, out int count, out Millimetres length, out string error)
    {
        count = 1;
        var match = Counted().Match((text ?? "").Trim());
        if (match.Success && !TryCount(match.Groups["count"].Value, out count, out error))
            length = default;
        else if (LengthText.TryParse(match.Success ? match.Groups["length"].Value : text, defaultUnit, out length, out error))
            return true;
        else
            error = $"{(string.IsNullOrWhiteSpace(text) ? "A lead needs its length." : $"\"{text.Trim()}\" does not say how long a lead is.")} Type a length such as 15 cm, 6 in or 3 m, or 6 x 15 cm for six of them.";
        return false;
    }

    public static bool TryCount(string text, out int count, out string error)
    {
        var isCount = int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out count) && count is >= 1 and <= Bounds.MostOfALead;
        error = isCount ? "" : $"\"{text}\" is not a count. Type a whole number from 1 to {Bounds.MostOfALead}.";
        return isCount;
    }

    /// <summary>The plugs at both ends; one word counts for both. Null where nothing was typed, or nothing that names plugs; then <paramref name="complain"/> hears of it.</summary>
    public static (PlugShape First, PlugShape Second)? Plugs(string text, Action<string> complain)
    {
        if (text.Length == 0)
            return null;
        var words = Filler().Replace(text, " ").Split((char[])[' ', '/', ',', '-', '–', '+', '&'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length is 1 or 2 && Array.TrueForAll(words, Shapes.ContainsKey))
            return (Shapes[words[0]], Shapes[words[^1]]);
        complain($"\"{text}\" does not say plugs. Type straight, angled or slim, for both ends or one after the other, such as straight to angled.");
        return null;
    }

    [GeneratedRegex(@"^(?<count>\d{1,4})\s*(?:[x×*]|of|pcs?\.?)\s*(?<length>.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex Counted();

    /// <summary>What people put around the words that count; <c>right angle</c> says no more than <c>angle</c>.</summary>
    [GeneratedRegex(@"\b(?:to|and|both|ends?|plugs?|right(?=[ -]?angled?))\b", RegexOptions.IgnoreCase)]
    private static partial Regex Filler();
}
