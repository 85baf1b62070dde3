using System.Globalization;
using System.Text.RegularExpressions;

namespace GigRig.Domain.Units;

/// <summary>
/// Lengths as people type and read them: <c>140</c>, <c>140 mm</c>, <c>14 cm</c>, <c>5.5 in</c>, <c>5 1/2"</c>, <c>5½″</c>, <c>10 ft</c>; decimal point or decimal comma.
/// One inch is 25.4 mm exactly, a foot twelve of it (international yard and pound agreement of 1959; NIST SP 811, appendix B).
/// </summary>
public static partial class LengthText
{
    /// <summary>In millimetres; well beyond any board, well within whole numbers.</summary>
    private const int Most = 1_000_000;

    private const decimal MillimetresInAnInch = 25.4m;

    /// <summary>Reads a length and rounds it to the nearest whole millimetre, halves up.</summary>
    /// <param name="text">With or without a unit.</param>
    /// <param name="defaultUnit">Meant where the text names none.</param>
    /// <param name="length">Zero where the text is not a length.</param>
    /// <param name="error">A sentence that quotes the text and says what to type; empty where all is well.</param>
    public static bool TryParse(string? text, LengthUnit defaultUnit, out Millimetres length, out string error)
    {
        length = Millimetres.Zero;
        var typed = (text ?? "").Trim();
        var match = Shape().Match(FractionText.Spell(typed));
        if (!match.Success)
        {
            error = $"\"{typed}\" is not a length. Type one such as 140 mm, 14 cm, 5.5 in or 5 1/2\".";
            return false;
        }

        var unit = UnitOf(match.Groups["unit"].Value, defaultUnit);
        if (unit is 1m or 10m && Thousands().IsMatch(match.Groups["number"].Value))
        {
            error = $"\"{typed}\" can be read in two ways. Type it without the separator.";
            return false;
        }

        if (FractionText.ValueOf(match) is not { } number)
        {
            error = $"\"{typed}\" divides by zero. Type a fraction such as 1/2.";
            return false;
        }

        if (number > Most / unit)
        {
            error = $"\"{typed}\" is more than {Most} mm. Type a shorter length.";
            return false;
        }

        length = ((int)Math.Round(number * unit, MidpointRounding.AwayFromZero)).Mm;
        error = "";
        return true;
    }

    /// <summary><c>140 mm</c> or <c>5.51 in</c>. Two decimals of an inch are fine enough to read back the same millimetre, and so to tell any two lengths apart.</summary>
    public static string Format(Millimetres length, LengthUnit unit) => unit == LengthUnit.Inches
        ? (length.Value / MillimetresInAnInch).ToString("0.##", CultureInfo.InvariantCulture) + " in"
        : length.Value.ToString(CultureInfo.InvariantCulture) + " mm";

    /// <summary><c>1200 mm²</c> or <c>1.86 in²</c>.</summary>
    public static string Format(SquareMillimetres area, LengthUnit unit) => unit == LengthUnit.Inches
        ? (area.Value / (MillimetresInAnInch * MillimetresInAnInch)).ToString("0.##", CultureInfo.InvariantCulture) + " in²"
        : area.ToString();

    private static decimal UnitOf(string unit, LengthUnit defaultUnit) => unit.ToLowerInvariant() switch
    {
        "" => defaultUnit == LengthUnit.Inches ? MillimetresInAnInch : 1m,
        "mm" => 1m,
        "cm" => 10m,
        "m" => 1000m,
        "ft" or "foot" or "feet" => 12 * MillimetresInAnInch,
        _ => MillimetresInAnInch,
    };

    /// <summary>A number, a fraction or both, then a unit. U+2033 is the double prime, U+201D the quotation mark that word processors put in its place.</summary>
    [GeneratedRegex("""^(?:(?<number>\d{1,9}(?:[.,]\d{1,9})?|[.,]\d{1,9})|(?<whole>\d{1,9})?(?:(?<=\d)[ \u00A0-]+|(?<!\d))(?<top>\d{1,4})/(?<bottom>\d{1,4}))\s*(?<unit>mm|cm|m|ft|foot|feet|in\.?|inch|inches|"|''|\u2033|\u201D)?$""", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant)]
    private static partial Regex Shape();

    /// <summary>One thousand in one country, one and no thousandths in the next.</summary>
    [GeneratedRegex(@"^[1-9]\d{0,2}[.,]\d{3}$")]
    private static partial Regex Thousands();
}
