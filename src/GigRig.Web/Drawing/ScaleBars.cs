using GigRig.Domain.Units;

namespace GigRig.Web.Drawing;

/// <summary>Finds a bar that is round, and about a third of the picture at most.</summary>
internal static class ScaleBars
{
    private const double MillimetresInAnInch = 25.4;

    public static SceneScaleBar Under(SceneArea reach, double textSize, LengthUnit unit)
    {
        var (sizes, each, word) = unit == LengthUnit.Inches
            ? (new[] { 20, 8, 4, 2, 1 }, MillimetresInAnInch, "in")
            : (new[] { 500, 200, 100, 50, 20, 10 }, 1.0, "mm");
        var round = sizes.FirstOrDefault(size => size * each <= reach.Width / 3, sizes[^1]);
        return new(new(reach.X, reach.Bottom + textSize), round * each, $"{round} {word}");
    }
}
