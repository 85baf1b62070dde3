using GigRig.Domain.Gear;

namespace GigRig.Domain.Rigs.Checks;

internal static class FunctionsCheck
{
    public static void Run(ValueList<RoleFunction> functions, Spot spot)
    {
        spot.Count("functions", functions.Count, Bounds.MostFunctions);
        foreach (var (index, function) in functions.Index())
        {
            var place = spot.Item("functions", index, $"function {index + 1} of {spot.Thing}");
            CheckRole(function.Role, "role", place);
            place.Whole("rating", function.Rating, Bounds.LeastRating, Bounds.MostRating);
            if (function.Section is { } section)
                place.Text("section", section, Bounds.LongestLabel);
        }
    }

    public static void CheckRole(Role role, string member, Spot spot)
    {
        if (!Role.IsWellFormed(role.Key))
            spot.Say(
                member,
                Spot.Shown(role.Key),
                $"1 to {Role.MaxLength} of a-z, 0-9, - and dots between parts",
                $"\"{Spot.Shown(role.Key)}\", a role of {spot.Thing}, is not well formed; use lower-case letters, digits, - and dots between parts, at most {Role.MaxLength}.");
    }
}
