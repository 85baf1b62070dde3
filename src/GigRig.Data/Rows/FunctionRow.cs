using GigRig.Domain;
using GigRig.Domain.Gear;

namespace GigRig.Data.Rows;

/// <summary>One function inside the JSON column of a device, an amp or an off-board item.</summary>
internal sealed class FunctionRow
{
    public string Role { get; set; } = "";

    public int Rating { get; set; }

    public string? Section { get; set; }

    public static List<FunctionRow> From(ValueList<RoleFunction> functions) =>
        [.. functions.Select(f => new FunctionRow { Role = f.Role.Key, Rating = f.Rating, Section = f.Section })];

    public static ValueList<RoleFunction> To(List<FunctionRow> rows) =>
        rows.Select(r => new RoleFunction(new Role(r.Role), r.Rating, r.Section)).ToValueList();
}
