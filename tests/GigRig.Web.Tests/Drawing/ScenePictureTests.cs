using System.Reflection;
using GigRig.TestKit.Building;
using GigRig.Web.Drawing;
using SkiaSharp;
using Xunit;

namespace GigRig.Web.Tests.Drawing;

public sealed class ScenePictureTests
{
    [Fact]
    public void It_is_a_png_in_the_shape_of_a_preview_with_board_and_bodies_where_the_scene_has_them()
    {
        var problem = A.Draft(A.Board(400, 200)).With(A.Device("echo").Sized(100, 100), A.Device("fuzz").Sized(100, 100)).Problem();
        var scene = BoardSceneMapper.Map(problem, A.Rig().Placing("echo", 0, 0).Placing("fuzz", 300, 100), PictureWidth.Narrow);

        using var picture = SKBitmap.Decode(ScenePicture.Png(scene));

        Assert.Equal((ScenePicture.Width, ScenePicture.Height), (picture.Width, picture.Height));
        Assert.Equal(ScenePicture.Ground, picture.GetPixel(2, 2));
        Assert.Equal(ScenePicture.Body, At(20, 190));
        Assert.Equal(ScenePicture.Body, At(390, 20));
        Assert.Equal(ScenePicture.Board, At(20, 20));
        Assert.Equal(ScenePicture.Board, At(390, 190));

        // From the picture's millimetres to its pixels, by hand.
        SKColor At(double x, double y)
        {
            var scale = Math.Min(1140 / scene.Extent.Width, 570 / scene.Extent.Height);
            return picture.GetPixel((int)(600 + ((x - scene.Extent.Centre.X) * scale)), (int)(315 + ((y - scene.Extent.Centre.Y) * scale)));
        }
    }

    [Fact]
    public void Its_colours_are_those_of_the_drawing()
    {
        var styles = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "../../../../../wwwroot-assets/css/drawing.css"))
            + File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "../../../../../wwwroot-assets/css/tokens.css"));
        var colours = typeof(ScenePicture).GetFields(BindingFlags.Public | BindingFlags.Static).Where(field => field.FieldType == typeof(SKColor)).Select(field => (SKColor)field.GetValue(null)!).ToList();

        Assert.Equal(11, colours.Count);
        Assert.All(colours, colour => Assert.Contains($"light-dark(#{colour.ToString()[3..]},", styles));
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(7, 1)]
    [InlineData(408, 3)]
    public void A_number_has_as_many_figures_as_it_is_written_with(int number, int figures) =>
        Assert.Equal(figures, Digits.Of(number).Count(path => SKPath.ParseSvgPathData(path) is { IsEmpty: false }));
}
