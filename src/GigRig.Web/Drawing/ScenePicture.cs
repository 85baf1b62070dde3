using GigRig.Domain.Wiring;
using SkiaSharp;

namespace GigRig.Web.Drawing;

/// <summary>
/// The scene as a PNG for chat previews. It carries signs and numbers and no words: the server may have no font, and what stands on a board is
/// told by the preview's own text. The colours are the light half of those in <c>css/drawing.css</c>.
/// </summary>
internal static class ScenePicture
{
    /// <summary>Pixels; the shape that previews are cut to.</summary>
    public const int Width = 1200;
    public const int Height = 630;

    public static readonly SKColor Ground = SKColor.Parse("#f6f5f1");
    public static readonly SKColor Board = SKColor.Parse("#e4e0d5");
    public static readonly SKColor BoardEdge = SKColor.Parse("#6d675c");
    public static readonly SKColor Rail = SKColor.Parse("#cdc7b8");
    public static readonly SKColor Body = SKColor.Parse("#fffdf8");
    public static readonly SKColor Edge = SKColor.Parse("#22282b");
    public static readonly SKColor Plug = SKColor.Parse("#b9b3a5");
    public static readonly SKColor Power = SKColor.Parse("#f1dca4");
    public static readonly SKColor Front = SKColor.Parse("#2f5f8f");
    public static readonly SKColor Loop = SKColor.Parse("#8a3d6b");
    public static readonly SKColor KeepOut = SKColor.Parse("#a3493f");

    private const float Margin = 30;

    public static byte[] Png(BoardScene scene)
    {
        using var surface = SKSurface.Create(new SKImageInfo(Width, Height));
        var canvas = surface.Canvas;
        canvas.Clear(Ground);
        var scale = (float)Math.Min((Width - (2 * Margin)) / scene.Extent.Width, (Height - (2 * Margin)) / scene.Extent.Height);
        canvas.Translate(Width / 2f, Height / 2f);
        canvas.Scale(scale);
        canvas.Translate(-(float)scene.Extent.Centre.X, -(float)scene.Extent.Centre.Y);
        // Lines are as wide in pixels on every board.
        Draw(canvas, scene, pixel: 1 / scale);
        using var image = surface.Snapshot();
        using var png = image.Encode(SKEncodedImageFormat.Png, quality: 100);
        return png.ToArray();
    }

    private static void Draw(SKCanvas canvas, BoardScene scene, float pixel)
    {
        Box(canvas, scene.Surface, Board, BoardEdge, 2 * pixel);
        foreach (var rail in scene.Rails)
            Box(canvas, rail, Rail, BoardEdge, pixel);
        foreach (var area in scene.KeepOuts)
            Box(canvas, area, SKColors.Transparent, KeepOut, 2 * pixel);
        foreach (var plug in scene.Bodies.SelectMany(body => body.Plugs))
            Box(canvas, plug.Area, plug.Kind == PlugKind.Power ? Power : Plug, Edge, pixel);
        foreach (var lead in scene.Leads)
            Lead(canvas, lead, pixel);
        foreach (var body in scene.Bodies)
            BodyOf(canvas, body, (float)scene.TextSize, pixel);
    }

    private static void Box(SKCanvas canvas, SceneArea area, SKColor fill, SKColor edge, float width)
    {
        var rect = SKRect.Create((float)area.X, (float)area.Y, (float)area.Width, (float)area.Height);
        using var paint = new SKPaint { IsAntialias = true, Color = fill };
        canvas.DrawRoundRect(rect, 3, 3, paint);
        using var line = Line(edge, width);
        canvas.DrawRoundRect(rect, 3, 3, line);
    }

    private static void Lead(SKCanvas canvas, SceneLead lead, float pixel)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(Spot(lead.Corners[0]));
        foreach (var corner in lead.Corners.Skip(1))
            builder.LineTo(Spot(corner));
        using var path = builder.Detach();
        using var line = Line(lead.Part == ChainPart.Loop ? Loop : Front, 4 * pixel);
        using var dashes = lead.Part == ChainPart.Loop ? SKPathEffect.CreateDash([12 * pixel, 8 * pixel], 0) : null;
        line.PathEffect = dashes;
        canvas.DrawPath(path, line);
    }

    private static void BodyOf(SKCanvas canvas, SceneBody body, float textSize, float pixel)
    {
        Box(canvas, body.Area, Body, Edge, 2 * pixel);
        using var front = Line(Edge, 6 * pixel);
        canvas.DrawLine(Spot(body.Front.From), Spot(body.Front.To), front);

        // The sign fills the middle, the number the corner.
        var room = (float)Math.Min(body.Area.Width, body.Area.Height);
        using var glyph = SKPath.ParseSvgPathData(body.Glyph.Path);
        using var line = Line(Edge, 24 / (room * 0.6f) * 3 * pixel);
        canvas.Save();
        canvas.Translate((float)body.Area.Centre.X - (room * 0.3f), (float)body.Area.Centre.Y - (room * 0.3f));
        canvas.Scale(room * 0.6f / 24);
        canvas.DrawPath(glyph, line);
        canvas.Restore();
        Number(canvas, body, Math.Min(textSize * 0.9f, room * 0.25f), pixel);
    }

    private static void Number(SKCanvas canvas, SceneBody body, float radius, float pixel)
    {
        var centre = new SKPoint((float)body.Area.X + (radius * 1.35f), (float)body.Area.Y + (radius * 1.35f));
        using var disc = new SKPaint { IsAntialias = true, Color = Edge };
        canvas.DrawCircle(centre, radius, disc);
        var digits = Digits.Of(body.Number);
        var size = radius * (digits.Count > 1 ? 0.42f : 0.55f);
        using var line = Line(Body, Math.Max(size * 0.24f, pixel));
        for (var i = 0; i < digits.Count; i++)
        {
            using var path = SKPath.ParseSvgPathData(digits[i]);
            path.Transform(SKMatrix.CreateScale(size / 2, size / 2).PostConcat(SKMatrix.CreateTranslation(centre.X + ((i - ((digits.Count - 1) / 2f)) * size * 1.5f) - (size / 2), centre.Y - size)));
            canvas.DrawPath(path, line);
        }
    }

    private static SKPaint Line(SKColor colour, float width) =>
        new() { IsAntialias = true, IsStroke = true, Color = colour, StrokeWidth = width, StrokeCap = SKStrokeCap.Round, StrokeJoin = SKStrokeJoin.Round };

    private static SKPoint Spot(SceneSpot spot) => new((float)spot.X, (float)spot.Y);
}
