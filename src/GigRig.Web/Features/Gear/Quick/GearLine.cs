namespace GigRig.Web.Features.Gear.Quick;

/// <summary>What can be said of a thing in one line, whether typed or in a table.</summary>
public enum LineField
{
    Kind,
    Name,
    Size,
    Width,
    Depth,
    Height,
    Mass,
    Roles,
    Draw,
    Volts,
    Outlets,
    Plugs,
    Count,
    Pickup,
    Status,
    Tags,
    Value,
    Note,
}

/// <summary>One thing in one line, as typed.</summary>
public sealed class GearLine(IEnumerable<KeyValuePair<LineField, string>> cells)
{
    private readonly Dictionary<LineField, string> cells = new(cells);

    /// <summary>Trimmed; empty where nothing was said.</summary>
    public string this[LineField field] => cells.GetValueOrDefault(field, "").Trim();

    public bool IsEmpty => cells.Values.All(string.IsNullOrWhiteSpace);
}
