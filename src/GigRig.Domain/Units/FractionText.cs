using System.Globalization;
using System.Text.RegularExpressions;

namespace GigRig.Domain.Units;

/// <summary>Fractions as typed: one character (<c>½</c>), or two numbers with a slash of either kind.</summary>
internal static class FractionText
{
    private static readonly Dictionary<char, string> Characters = new()
    {
        ['½'] = "1/2", ['¼'] = "1/4", ['¾'] = "3/4", ['⅓'] = "1/3", ['⅔'] = "2/3",
        ['⅛'] = "1/8", ['⅜'] = "3/8", ['⅝'] = "5/8", ['⅞'] = "7/8",
    };

    /// <summary>Writes every fraction character out, set off by a blank: <c>5½″</c> becomes <c>5 1/2″</c>.</summary>
    public static string Spell(string text) =>
        string.Concat(text.Select(c => Characters.TryGetValue(c, out var spelt) ? " " + spelt : c == '⁄' ? "/" : c.ToString())).TrimStart();

    /// <summary>The value of the groups <c>number</c>, or <c>whole</c>, <c>top</c> and <c>bottom</c>; null where it divides by zero.</summary>
    public static decimal? ValueOf(Match match)
    {
        if (match.Groups["number"] is { Success: true } number)
            return decimal.Parse(number.Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        var bottom = Whole("bottom");
        return bottom == 0 ? null : Whole("whole") + Whole("top") / bottom;

        decimal Whole(string group) =>
            match.Groups[group] is { Success: true } digits ? decimal.Parse(digits.Value, NumberStyles.None, CultureInfo.InvariantCulture) : 0;
    }
}
