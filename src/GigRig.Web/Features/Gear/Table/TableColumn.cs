using System.Text.RegularExpressions;
using GigRig.Web.Features.Gear.Quick;

namespace GigRig.Web.Features.Gear.Table;

/// <summary>A column of a table: what it holds, and the unit its heading names.</summary>
/// <param name="Field">Null for a column that is left out.</param>
/// <param name="Unit">Meant where a cell has a bare number; empty where the heading names none.</param>
public sealed partial record TableColumn(string Heading, LineField? Field, string Unit)
{
    private static readonly Dictionary<LineField, string[]> Words = new()
    {
        [LineField.Kind] = ["kind", "type", "category"],
        [LineField.Name] = ["name", "device", "box", "item", "thing", "what", "title"],
        [LineField.Size] = ["size", "shape", "footprint", "dimensions", "enclosure", "measures"],
        [LineField.Width] = ["width", "w", "wide", "breadth"],
        [LineField.Depth] = ["depth", "length", "d", "l", "deep"],
        [LineField.Height] = ["height", "h", "high"],
        [LineField.Mass] = ["mass", "weight"],
        [LineField.Roles] = ["role", "roles", "function", "functions", "does", "effect", "effects", "sound", "job"],
        [LineField.Draw] = ["draw", "current", "current draw", "consumption", "ma", "milliamps"],
        [LineField.Volts] = ["volts", "voltage", "v"],
        [LineField.Outlets] = ["outlets", "outlet", "outputs"],
        [LineField.Plugs] = ["plug", "plugs", "ends", "plug ends"],
        [LineField.Count] = ["count", "how many", "number", "quantity", "qty", "pieces"],
        [LineField.Pickup] = ["pickup", "pickups"],
        [LineField.Status] = ["status", "state"],
        [LineField.Tags] = ["tag", "tags", "label", "labels"],
        [LineField.Value] = ["value", "price", "worth", "cost"],
        [LineField.Note] = ["note", "notes", "comment", "comments", "remark", "remarks"],
    };

    /// <summary>What a heading says, by the words people put there, with or without a unit: <c>Width (in)</c>, <c>weight [kg]</c>, <c>Draw mA</c>.</summary>
    public static TableColumn Of(string heading)
    {
        var whole = Find(heading);
        if (whole is not null)
            return new(heading, whole, whole == LineField.Draw ? "mA" : "");
        var match = Shape().Match(heading.Trim());
        return match.Success && Find(match.Groups["word"].Value) is { } field
            ? new(heading, field, match.Groups["unit"].Value is "\"" or "inch" or "inches" ? "in" : match.Groups["unit"].Value)
            : new(heading, null, "");
    }

    /// <summary>The cell with the unit of its column, where it is a bare number.</summary>
    public string Complete(string cell) => Unit.Length > 0 && Bare().IsMatch(cell) ? $"{cell} {Unit}" : cell;

    private static LineField? Find(string word)
    {
        var plain = word.Trim().TrimEnd(':').Trim();
        return Words.Where(field => field.Value.Contains(plain, StringComparer.OrdinalIgnoreCase)).Select(field => (LineField?)field.Key).FirstOrDefault();
    }

    [GeneratedRegex("""^(?<word>.+?)\s*[\s,/(\[]\s*(?:in\s+)?(?<unit>mm|cm|m|ft|in|inch|inches|"|g|kg|lbs?|oz|mA|A|V)\s*[)\]]?$""", RegexOptions.IgnoreCase)]
    private static partial Regex Shape();

    [GeneratedRegex(@"^[\d.,]*\d(?:[ -]\d+[/⁄]\d+|[/⁄]\d+|\s?[½¼¾⅓⅔⅛⅜⅝⅞])?$")]
    private static partial Regex Bare();
}
