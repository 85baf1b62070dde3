using System.Globalization;

namespace GigRig.Web.Drawing;

/// <summary>Numbers as SVG wants them, whatever the reader's culture writes.</summary>
internal static class SvgNumbers
{
    public static string N(double value) => Math.Round(value, 2).ToString(CultureInfo.InvariantCulture);

    public static string ViewBox(SceneArea area) => $"{N(area.X)} {N(area.Y)} {N(area.Width)} {N(area.Height)}";

    public static string Curve(SceneLead lead) =>
        $"M{N(lead.From.X)} {N(lead.From.Y)}C{N(lead.FromPull.X)} {N(lead.FromPull.Y)} {N(lead.ToPull.X)} {N(lead.ToPull.Y)} {N(lead.To.X)} {N(lead.To.Y)}";
}
