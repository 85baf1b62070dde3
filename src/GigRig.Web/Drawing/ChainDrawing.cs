using GigRig.Domain;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Drawing;

/// <summary>One stop as drawn.</summary>
/// <param name="Lines">Its name, wrapped and if need be cut; the list beside the picture has it in full.</param>
public sealed record ChainBox(SceneArea Area, int? Number, bool IsEnd, ValueList<string> Lines);

/// <summary>The leads from one stop to another as drawn: one arrow, with their letters.</summary>
/// <param name="Part">The loop's are dashed, as in the board drawing.</param>
public sealed record ChainArrow(ChainPart Part, string Marks, ValueList<SceneSpot> Corners)
{
    /// <summary>Where the letters stand: over a straight arrow, which is short, and on the longest piece of one that bends.</summary>
    public SceneSpot Middle => SceneSpot.MiddleOf(Corners) is var at && Corners.Count > 2 ? at : at with { Y = at.Y - 9 };
}

/// <summary>The chain as a still picture: both rows read from left to right and run on below where the paper ends. In px of a picture shown at its full width.</summary>
/// <param name="Description">Who leads to whom by which lead, for those who hear it.</param>
public sealed record ChainDrawing(string Description, SceneArea Extent, ValueList<ChainBox> Boxes, ValueList<ChainArrow> Arrows)
{
    public const string Title = "Audio order, stop by stop";
    public const double TextSize = 12;
    private const double BoxHeight = 56;
    private const double ColumnGap = 30;
    private const double LineGap = 34;
    private const double Margin = 16;
    private const int LinesOfText = 3;

    // Arrows that share a gap keep off each other.
    private const int Lanes = 3;
    private const double LaneWidth = 4;

    public static ChainDrawing Of(ChainPicture picture, PictureWidth width)
    {
        var (boxWidth, across) = width == PictureWidth.Narrow ? (92.0, 3) : (96.0, 7);
        var reached = picture.Links.SelectMany(link => new[] { link.From, link.To }).ToHashSet();
        var front = picture.Nodes.Where(node => node.Part == ChainPart.Front).ToList();
        // A loop that nothing runs through is left out.
        var loop = picture.Nodes.Where(node => node.Part == ChainPart.Loop && reached.Contains(node.Key)).ToList();
        var frontLines = (front.Count + across - 1) / across;
        var places = front.Select((node, i) => (node, column: i % across, line: i / across))
            .Concat(loop.Select((node, i) => (node, column: i % across, line: frontLines + (i / across))))
            .ToDictionary(place => place.node.Key);
        var lines = frontLines + ((loop.Count + across - 1) / across);
        var extent = new SceneArea(0, 0, (2 * Margin) + (across * boxWidth) + ((across - 1) * ColumnGap), (2 * Margin) + (lines * BoxHeight) + ((lines - 1) * LineGap));
        var bends = 0;
        return new(
            string.Join(" ", picture.Links.Select(link => $"{Said(link.From)} to {Said(link.To)}{By(link.Marks)}.")),
            extent,
            places.Values.Select(place => BoxOf(place.node, AreaOf(place.node.Key))).ToValueList(),
            picture.Links.Select(ArrowOf).ToValueList());

        SceneArea AreaOf(string key) =>
            new(Margin + (places[key].column * (boxWidth + ColumnGap)), Margin + (places[key].line * (BoxHeight + LineGap)), boxWidth, BoxHeight);

        string Said(string key) => places[key].node is { Number: { } number } numbered ? $"{number} {numbered.Title}" : places[key].node.Title;

        ChainArrow ArrowOf(ChainPictureLink link)
        {
            var (from, to) = (places[link.From], places[link.To]);
            var part = from.node.Part == ChainPart.Loop || to.node.Part == ChainPart.Loop ? ChainPart.Loop : ChainPart.Front;
            var straight = from.line == to.line && to.column == from.column + 1;
            return new(part, string.Join(", ", link.Marks), Way(AreaOf(link.From), AreaOf(link.To), straight ? null : ((bends++ % Lanes) - 1) * LaneWidth).ToValueList());
        }
    }

    /// <summary>Straight to the next box, or through the gaps between columns and lines, where no box stands.</summary>
    private static IEnumerable<SceneSpot> Way(SceneArea from, SceneArea to, double? lane)
    {
        var (start, end) = (new SceneSpot(from.Right, from.Centre.Y), new SceneSpot(to.X, to.Centre.Y));
        if (lane is not { } off)
            return [start, end];
        var (right, left) = (start.X + (Margin / 2) + off, end.X - (Margin / 2) - 3 + off);
        var gap = (to.Y < from.Y ? from.Y - (LineGap / 2) : from.Bottom + (LineGap / 2)) + off;
        return [start, new(right, start.Y), new(right, gap), new(left, gap), new(left, end.Y), end];
    }

    private static ChainBox BoxOf(ChainPictureNode node, SceneArea area) => new(
        area,
        node.Number,
        node.Device is null,
        LabelFitter.Wrap(node.Title, (int)(area.Width / (LabelFitter.LetterWidth * TextSize)), LinesOfText).ToValueList());

    private static string By(ValueList<string> marks) => marks.Count switch
    {
        0 => " by a long lead",
        1 => $" by lead {marks[0]}",
        _ => $" by leads {string.Join(" and ", marks)}",
    };
}
