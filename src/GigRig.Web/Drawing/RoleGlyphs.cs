using GigRig.Domain.Gear;

namespace GigRig.Web.Drawing;

/// <summary>A sign drawn as one line path in a 24 × 24 square.</summary>
public sealed record RoleGlyph(string Family, string Path);

/// <summary>One plain sign for each family of roles, so that a role can be told without colour. A sign always stands beside its word.</summary>
internal static class RoleGlyphs
{
    /// <summary>A role of the owner's own: a plain diamond.</summary>
    public static RoleGlyph Other { get; } = new("other", "M12 4 20 12 12 20 4 12Z");

    /// <summary>The supply: a bolt.</summary>
    public static RoleGlyph Supply { get; } = new("supply", "M13 3 6 13.5H11.5L10 21 18 10H12.5Z");

    private static readonly Dictionary<string, RoleGlyph> ByFamily = new[]
    {
        // A needle over a dial.
        new RoleGlyph("tuner", "M3 17A9 9 0 0 1 21 17M12 17V7M4 20H20"),
        // Two posts with a bar that shuts.
        new RoleGlyph("gate", "M5 4V20M19 4V20M5 9H19M5 15H19M12 9V15"),
        // Two arrows pressing on a line.
        new RoleGlyph("compressor", "M3 12H21M12 3V9M9.5 6.5 12 9 14.5 6.5M12 21V15M9.5 17.5 12 15 14.5 17.5"),
        // A resonant bump.
        new RoleGlyph("filter", "M3 18H7C10 18 10 5 12.5 5S15 18 21 18"),
        // A step up.
        new RoleGlyph("pitch", "M3 19H10V12H16V5H21M18 8 21 5 18 2"),
        // An arrow up from a base.
        new RoleGlyph("boost", "M12 18V4M7 9 12 4 17 9M5 20.5H19"),
        // A wave with its tops cut off.
        new RoleGlyph("drive", "M2 12H3.5L6 6H11L13 18H18L20.5 12H22"),
        // Three sliders.
        new RoleGlyph("equaliser", "M6 4V20M12 4V20M18 4V20M3.5 15H8.5M9.5 8H14.5M15.5 12H20.5"),
        // Two waves out of step.
        new RoleGlyph("modulation", "M2 12C5 3 8 3 11 12S17 21 20 12M5 12C8 4.5 10 4.5 13 12S19 19.5 22 12"),
        // A wedge.
        new RoleGlyph("volume", "M3 18H21V6Z"),
        // Falling repeats.
        new RoleGlyph("delay", "M4 20V4M9 20V9M14 20V13M19 20V17"),
        // Spreading arcs.
        new RoleGlyph("reverb", "M5 12H5.5M9 8A6 6 0 0 1 9 16M13 5.5A10 10 0 0 1 13 18.5M17 3A14 14 0 0 1 17 21"),
        // A loop that closes on itself.
        new RoleGlyph("looper", "M19 8A8 8 0 1 0 20 13M20 4V9H15"),
        // An open ring.
        new RoleGlyph("clean", "M12 4A8 8 0 1 1 11.9 4Z"),
        // A sound hole with strings.
        new RoleGlyph("acoustic", "M12 5A7 7 0 1 1 11.9 5ZM9.5 2V22M14.5 2V22"),
        // A line into a box.
        new RoleGlyph("direct", "M2 12H12M9 9 12 12 9 15M14 5H21V19H14"),
    }.ToDictionary(glyph => glyph.Family);

    public static IReadOnlyCollection<RoleGlyph> All => ByFamily.Values;

    /// <summary>By the part before the first dot: <c>drive.high</c> has the sign of <c>drive</c>.</summary>
    public static RoleGlyph Of(Role role) => ByFamily.GetValueOrDefault(role.Key.Split('.')[0], Other);
}
