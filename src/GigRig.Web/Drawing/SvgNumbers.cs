using System.Globalization;
using System.Text;
using GigRig.Domain;

namespace GigRig.Web.Drawing;

/// <summary>Numbers as SVG wants them, whatever the reader's culture writes.</summary>
internal static class SvgNumbers
{
    public static string N(double value) => Math.Round(value, 2).ToString(CultureInfo.InvariantCulture);

    public static string ViewBox(SceneArea area) => $"{N(area.X)} {N(area.Y)} {N(area.Width)} {N(area.Height)}";

    /// <summary>A line with rounded corners; at a corner it is cut short by the radius, or by half the shorter piece.</summary>
    public static string Line(ValueList<SceneSpot> corners, double radius)
    {
        var path = new StringBuilder($"M{N(corners[0].X)} {N(corners[0].Y)}");
        for (var i = 1; i + 1 < corners.Count; i++)
        {
            var (before, at, after) = (corners[i - 1], corners[i], corners[i + 1]);
            var cut = Math.Min(radius, Math.Min(Length(before, at), Length(at, after)) / 2);
            var (from, to) = (Towards(at, before, cut), Towards(at, after, cut));
            path.Append(CultureInfo.InvariantCulture, $"L{N(from.X)} {N(from.Y)}Q{N(at.X)} {N(at.Y)} {N(to.X)} {N(to.Y)}");
        }

        return path.Append(CultureInfo.InvariantCulture, $"L{N(corners[^1].X)} {N(corners[^1].Y)}").ToString();
    }

    private static double Length(SceneSpot a, SceneSpot b) => Math.Abs(a.X - b.X) + Math.Abs(a.Y - b.Y);

    private static SceneSpot Towards(SceneSpot from, SceneSpot to, double by) =>
        Length(from, to) is > 0 and var length ? new(from.X + ((to.X - from.X) * by / length), from.Y + ((to.Y - from.Y) * by / length)) : from;
}
