using GigRig.Domain.Units;

namespace GigRig.Web.Shared;

/// <summary>Lengths that belong together, with the unit said once.</summary>
public static class Measures
{
    /// <summary>Such as <c>70 × 122 mm</c>.</summary>
    public static string Footprint(Millimetres width, Millimetres depth, LengthUnit unit) =>
        $"{LengthText.Format(width, unit).Split(' ')[0]} × {LengthText.Format(depth, unit)}";
}
