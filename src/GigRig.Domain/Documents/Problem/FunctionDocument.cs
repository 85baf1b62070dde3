using System.ComponentModel;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Domain.Documents.Problem;

[Description("One thing that a device, an amp or an off-board thing can do.")]
public sealed record FunctionDocument
{
    [Description("Lower-case letters, digits, - and dots; a dot narrows.")]
    [RoleKey]
    [Within(1, Gear.Role.MaxLength)]
    public required string Role { get; init; }

    [Within(Bounds.LeastRating, Bounds.MostRating)]
    public int Rating { get; init; } = RoleFunction.DefaultRating;

    [Description("Functions of the same section are either/or at any one moment. Absent: a section of its own.")]
    [Within(1, Bounds.LongestLabel)]
    public string? Section { get; init; }

    internal static FunctionDocument Of(RoleFunction function) =>
        new() { Role = function.Role.Key, Rating = function.Rating, Section = function.Section };

    internal RoleFunction ToFunction() => new(new(Role), Rating, Section);
}
