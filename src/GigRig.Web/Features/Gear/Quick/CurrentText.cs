using System.Globalization;
using System.Text.RegularExpressions;
using GigRig.Domain.Rigs.Checks;
using GigRig.Domain.Units;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>Currents as people write them: <c>100</c>, <c>100 mA</c>, <c>0.5 A</c>.</summary>
public static partial class CurrentText
{
    /// <summary>Null where nothing was typed, or nothing that is a current; then <paramref name="complain"/> hears of it.</summary>
    public static Milliamps? Read(string text, Action<string> complain)
    {
        if (text.Length == 0)
            return null;
        var match = Shape().Match(text);
        var number = match.Success ? decimal.Parse(match.Groups["number"].Value.Replace(',', '.'), CultureInfo.InvariantCulture) : 0;
        var milliamps = match.Groups["unit"].Value.Equals("A", StringComparison.OrdinalIgnoreCase) ? number * 1000 : number;
        if (!match.Success)
            complain($"\"{text}\" is not a current. Type milliamps, such as 100, or none where it needs no power.");
        else if (milliamps > Bounds.MostDraw)
            complain($"\"{text}\" is more than {Bounds.MostDraw} mA. Type what its label says, in milliamps.");
        else if (milliamps % 1 != 0)
            complain($"\"{text}\" is not a whole number of milliamps. Round it up.");
        else
            return ((int)milliamps).MilliA;
        return null;
    }

    [GeneratedRegex(@"^(?<number>\d{1,6}(?:[.,]\d{1,6})?)\s*(?<unit>mA|A)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Shape();
}
