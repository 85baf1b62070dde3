using System.Text.RegularExpressions;

namespace GigRig.Domain.Units;

/// <summary>Two or three lengths as people write them in one breath: <c>70 x 122</c>, <c>2.75 × 4.8 in</c>, <c>60 cm x 30 cm x 8 cm</c>: width, depth, perhaps height.</summary>
public static partial class FootprintText
{
    /// <summary>Reads two or three lengths. A unit named only at the end is meant for all of them.</summary>
    /// <param name="error">A sentence that quotes the text and says what to type; empty where all is well.</param>
    public static bool TryParse(string? text, LengthUnit defaultUnit, out Millimetres width, out Millimetres depth, out Millimetres? height, out string error)
    {
        (width, depth, height) = (Millimetres.Zero, Millimetres.Zero, null);
        var typed = (text ?? "").Trim();
        var parts = Times().Split(typed);
        if (parts.Length is not (2 or 3))
        {
            error = $"\"{typed}\" is not a size. Type width × depth, such as 70 x 122 mm or 2 3/4 x 4 3/4 in.";
            return false;
        }

        var unit = Unit().Match(parts[^1]).Value;
        var lengths = new Millimetres[parts.Length];
        for (var i = 0; i < parts.Length; i++)
        {
            var part = parts[i].Trim();
            if (!LengthText.TryParse(Unit().IsMatch(part) ? part : part + unit, defaultUnit, out lengths[i], out error))
                return false;
        }

        (width, depth, height) = (lengths[0], lengths[1], lengths.Length == 3 ? lengths[2] : null);
        error = "";
        return true;
    }

    [GeneratedRegex(@"\s*[x×*]\s*|\s+by\s+", RegexOptions.IgnoreCase)]
    private static partial Regex Times();

    /// <summary>Whatever stands behind the last digit or fraction sign.</summary>
    [GeneratedRegex("""[^\d\s.,/⁄½¼¾⅓⅔⅛⅜⅝⅞-][^\d]*$""")]
    private static partial Regex Unit();
}
