using System.Text.Json.Serialization;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>One thing in one line, as typed.</summary>
public sealed class QuickForm : LiveForm
{
    /// <summary>Word of a kind.</summary>
    public string Kind { get; set; } = "device";

    public string Name { get; set; } = "";

    public string Size { get; set; } = "";

    public string Roles { get; set; } = "";

    public string Draw { get; set; } = "";

    public string Outlets { get; set; } = "";

    public string Plugs { get; set; } = "";

    public string Pickup { get; set; } = "";

    public override string Title => Name;

    /// <summary>Nothing was typed, whatever the kind.</summary>
    [JsonIgnore]
    public bool IsBlank => string.IsNullOrWhiteSpace(Name + Size + Roles + Draw + Outlets + Plugs + Pickup);

    [JsonIgnore]
    public bool HasSize => Kind is "device" or "board" or "lead";

    [JsonIgnore]
    public bool HasRoles => Kind is "device" or "amp" or "off-board";

    [JsonIgnore]
    public bool HasDraw => Kind == "device";

    [JsonIgnore]
    public bool HasOutlets => Kind == "supply";

    [JsonIgnore]
    public bool HasPlugs => Kind == "lead";

    [JsonIgnore]
    public bool HasPickup => Kind == "instrument";

    /// <summary>Knows the roles; null until the page is loaded.</summary>
    [JsonIgnore]
    public GearLineReader? Reader { get; set; }

    public override void Check() => Read();

    /// <summary>Null where something is wrong, which is then in <see cref="LiveForm.Errors"/>.</summary>
    public NewGear? Read()
    {
        if (Reader is null)
            return null;
        var (gear, faults) = Reader.Read(Line());
        Errors.Set(faults.Select(fault => new FieldError(fault.Field.ToString().ToLowerInvariant(), fault.Sentence)));
        return gear;
    }

    // What was typed for another kind and is not on the page now does not count.
    private GearLine Line() => new(new Dictionary<LineField, string>
    {
        [LineField.Kind] = Kind,
        [LineField.Name] = Name,
        [LineField.Size] = HasSize ? Size : "",
        [LineField.Roles] = HasRoles ? Roles : "",
        [LineField.Draw] = HasDraw ? Draw : "",
        [LineField.Outlets] = HasOutlets ? Outlets : "",
        [LineField.Plugs] = HasPlugs ? Plugs : "",
        [LineField.Pickup] = HasPickup ? Pickup : "",
    });
}
