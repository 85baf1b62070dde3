using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Web.Shared.Forms;

namespace GigRig.Web.Features.Gear.Forms;

/// <summary>One thing the gear can do, as typed.</summary>
public sealed class FunctionRow
{
    public string Role { get; set; } = "";

    public int Rating { get; set; } = RoleFunction.DefaultRating;

    public string Section { get; set; } = "";
}

/// <summary>Rows of functions to functions and back.</summary>
internal static class FunctionEntries
{
    public static List<FunctionRow> Show(ValueList<RoleFunction> functions) =>
        [.. functions.Select(f => new FunctionRow { Role = f.Role.Key, Rating = f.Rating, Section = f.Section ?? "" })];

    public static ValueList<RoleFunction> Read(IReadOnlyList<FunctionRow> rows, EntryReader read)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            if (rows[i].Role.Length == 0)
                read.Add($"functions/{i}/role", "No role is picked. Pick one, or take the line away.");
        }

        return rows.Where(row => row.Role.Length > 0)
            .Select(row => new RoleFunction(new(row.Role), row.Rating, row.Section.Trim() is { Length: > 0 } section ? section : null))
            .ToValueList();
    }
}
