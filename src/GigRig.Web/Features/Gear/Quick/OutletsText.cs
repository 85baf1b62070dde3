using System.Globalization;
using System.Text.RegularExpressions;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>The outlets of a supply in a few words: <c>8 outlets 9 V 100 mA</c>, <c>6 x 9V 100mA + 2 x 12/18 V 0.5 A</c>, <c>1 x 9 V AC 1 A</c>.</summary>
public static partial class OutletsText
{
    /// <param name="error">A sentence that quotes the text and says what to type; empty where all is well.</param>
    public static bool TryParse(string? text, out ValueList<Outlet> outlets, out string error)
    {
        outlets = [];
        var made = new List<Outlet>();
        var typed = (text ?? "").Trim();
        foreach (var part in typed.Split(['+', ';', '\n', '&'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var match = Shape().Match(part);
            if (!match.Success)
            {
                error = $"\"{part}\" does not say outlets. Type how many, volts and milliamps, such as 8 outlets 9 V 100 mA, and put a + between different ones.";
                return false;
            }

            var count = match.Groups["count"] is { Success: true } counted ? int.Parse(counted.Value, CultureInfo.InvariantCulture) : 1;
            if (made.Count + count > Bounds.MostOutlets)
            {
                error = $"\"{typed}\" is more than {Bounds.MostOutlets} outlets. Type at most {Bounds.MostOutlets}.";
                return false;
            }

            for (var i = 0; i < count; i++)
                made.Add(new($"{made.Count + 1}", Volts(match), Current(match), match.Groups["ac"].Success ? CurrentType.Ac : CurrentType.Dc));
        }

        error = made.Count == 0 ? "It does not say any outlets. Type how many, volts and milliamps, such as 8 outlets 9 V 100 mA." : "";
        outlets = made.ToValueList();
        return made.Count > 0;
    }

    private static ValueList<Millivolts> Volts(Match match) =>
        match.Groups["volts"].Captures.Select(volts => ((int)decimal.Round(Number(volts.Value) * 1000)).MilliV).ToValueList();

    private static Milliamps Current(Match match) =>
        ((int)decimal.Round(Number(match.Groups["current"].Value) * (match.Groups["unit"].Value.Equals("A", StringComparison.OrdinalIgnoreCase) ? 1000 : 1))).MilliA;

    private static decimal Number(string digits) => decimal.Parse(digits.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^(?:(?<count>\d{1,3})\s*(?:[x×*]|outlets?|ways?)?\s*[,:]?\s*(?:of|at|@|[x×*])?\s+|(?<count>\d{1,3})\s*[x×*]\s*)?(?<volts>\d{1,3}(?:[.,]\d{1,3})?)(?:\s*/\s*(?<volts>\d{1,3}(?:[.,]\d{1,3})?))*\s*V\s*(?:DC|(?<ac>AC))?\s*,?\s*(?:at|@|/)?\s*(?<current>\d{1,6}(?:[.,]\d{1,3})?)\s*(?<unit>mA|A)$",
        RegexOptions.IgnoreCase)]
    private static partial Regex Shape();
}
