using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Web.Drawing;

/// <summary>How wide the picture will be shown; decides how large the letters are drawn beside the board.</summary>
public enum PictureWidth
{
    /// <summary>On a phone, about 360 px. Leaves out foot switches and the marks of the long leads, which would lie under the words.</summary>
    Narrow,

    /// <summary>On a desk or a sheet of paper, about 900 px.</summary>
    Wide,
}

/// <summary>From a problem and a rig to the picture of it. Pure; tolerates a rig that breaks rules or names things the problem does not know.</summary>
public static class BoardSceneMapper
{
    // The text is never smaller than about 12 px on the screen it is made for.
    private const double LettersAcrossNarrow = 30;
    private const double LettersAcrossWide = 68;
    private const double LeastTextSize = 4;

    /// <param name="unit">Of the scale and of the words; the picture itself is in millimetres.</param>
    public static BoardScene Map(RigProblem problem, Rig rig, PictureWidth width = PictureWidth.Wide, LengthUnit unit = LengthUnit.Millimetres)
    {
        var depth = problem.Board.Depth;
        var surface = SceneArea.Of(problem.Board.Surface, depth);
        var bodies = PlacedBodies.Of(problem, rig).ToList();
        var reach = bodies.Aggregate(surface, (area, body) => body.Plugs.Aggregate(area.Around(body.Area), (all, plug) => all.Around(plug.Area)));
        var textSize = Math.Max(LeastTextSize, reach.Width / (width == PictureWidth.Narrow ? LettersAcrossNarrow : LettersAcrossWide));
        var leads = LeadLines.Of(problem, rig).ToValueList();
        var ends = width == PictureWidth.Narrow ? [] : ChainEnds.Of(problem, rig).Concat(OutletTags.Of(bodies)).ToValueList();
        var bar = ScaleBars.Under(reach, textSize, unit);
        var legend = SceneLegend.Of(problem, bodies).ToValueList();

        return new(
            SceneWords.TitleOf(problem, rig),
            SceneWords.DescriptionOf(problem, bodies, unit),
            ExtentOf(reach, leads, ends, bar, textSize),
            textSize,
            surface,
            problem.Board.Rails.Select(rail => SceneArea.Of(new Rect(Millimetres.Zero, rail.From, problem.Board.Width, rail.To - rail.From), depth)).ToValueList(),
            problem.Board.KeepOuts.Select(area => SceneArea.Of(area, depth)).ToValueList(),
            bodies.Select(body => width == PictureWidth.Narrow ? body.Labelled(textSize) with { Switches = [] } : body.Labelled(textSize)).ToValueList(),
            leads,
            ends,
            bar,
            legend);
    }

    private static SceneArea ExtentOf(SceneArea reach, ValueList<SceneLead> leads, ValueList<SceneTag> ends, SceneScaleBar bar, double textSize)
    {
        var all = leads.SelectMany(lead => lead.Corners).Aggregate(reach, (area, spot) => area.Around(spot));
        all = ends.Aggregate(all, (area, tag) => area.Around(new SceneArea(tag.At.X, tag.At.Y, 0, 0).GrownBy(textSize)));
        all = all.Around(new SceneSpot(bar.From.X, bar.From.Y + (textSize * 1.4)));
        return all.GrownBy(textSize / 2);
    }
}
