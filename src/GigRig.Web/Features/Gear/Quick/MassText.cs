using System.Globalization;
using System.Text.RegularExpressions;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>Masses as people write them: <c>400</c>, <c>400 g</c>, <c>0.4 kg</c>, <c>14 oz</c>, <c>2.2 lb</c>.</summary>
/// <remarks>A pound is 453.59237 g and an ounce a sixteenth of it, exactly (international yard and pound agreement of 1959; NIST SP 811, appendix B).</remarks>
public static partial class MassText
{
    private const decimal GramsInAPound = 453.59237m;

    /// <summary>Reads a mass and rounds it to the nearest gram.</summary>
    /// <param name="bare">Grams that a number without a unit counts.</param>
    public static bool TryParse(string? text, decimal bare, out Grams mass, out string error)
    {
        mass = Grams.Zero;
        var typed = (text ?? "").Trim();
        var match = Shape().Match(typed);
        if (!match.Success)
        {
            error = $"\"{typed}\" is not a mass. Type one such as 400 g, 0.4 kg or 14 oz.";
            return false;
        }

        var unit = match.Groups["unit"].Value.ToLowerInvariant() switch
        {
            "g" => 1m,
            "kg" => 1000m,
            "oz" => GramsInAPound / 16,
            "lb" or "lbs" => GramsInAPound,
            _ => bare,
        };
        mass = ((int)Math.Round(decimal.Parse(match.Groups["number"].Value.Replace(',', '.'), CultureInfo.InvariantCulture) * unit, MidpointRounding.AwayFromZero)).G;
        error = "";
        return true;
    }

    [GeneratedRegex(@"^(?<number>\d{1,6}(?:[.,]\d{1,4})?)\s*(?<unit>g|kg|oz|lbs?)?\.?$", RegexOptions.IgnoreCase)]
    private static partial Regex Shape();
}
