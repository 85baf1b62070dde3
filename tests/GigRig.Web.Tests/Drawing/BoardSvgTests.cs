using System.Globalization;
using Bunit;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Drawing;
using Xunit;

namespace GigRig.Web.Tests.Drawing;

public sealed class BoardSvgTests : BunitContext
{
    private static readonly RigProblem Problem = A.Draft(A.Board(400, 200))
        .With(A.Device("tuner").Sized(45, 101).Doing("tuner").Drawing(30).WithJack(JackUse.Power, Side.Rear, 20), A.Device("echo").Sized(70, 120).Doing("delay"))
        .Needing("tuner", "delay").FedBy(A.Outlet("5")).Problem();

    private static readonly Rig Rig = A.Rig().Placing("echo", 0, 0).Placing("tuner", 200, 0).Feeding("tuner", "5").Chained("tuner echo");

    [Fact]
    public void The_view_box_is_the_extent_in_millimetres_whatever_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        try
        {
            var svg = Drawn();
            var scene = BoardSceneMapper.Map(Problem, Rig);

            Assert.Equal(SvgNumbers.ViewBox(scene.Extent), svg.Find("svg").GetAttribute("viewBox"));
            Assert.DoesNotContain(',', svg.Find("svg").GetAttribute("viewBox")!);
            Assert.DoesNotContain(svg.FindAll("rect"), rect => rect.GetAttribute("x")!.Contains(','));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_reader_who_hears_it_gets_title_and_description()
    {
        var svg = Drawn().Find("svg");

        Assert.Equal("img", svg.GetAttribute("role"));
        Assert.Equal("pic-title pic-words", svg.GetAttribute("aria-labelledby"));
        Assert.Contains("2: echo, 0 mm from the left", Drawn().Find("#pic-words").TextContent);
    }

    [Fact]
    public void A_body_shows_number_sign_name_role_and_outlet()
    {
        var tuner = Drawn().FindAll(".scene-body")[0];

        Assert.Equal("1", tuner.QuerySelector(".scene-number")!.TextContent);
        Assert.Equal(RoleGlyphs.Of(new("tuner")).Path, tuner.QuerySelector(".scene-glyph")!.GetAttribute("d"));
        Assert.Equal(["tuner", "Tuner", "5: 9 V"], tuner.QuerySelectorAll(".scene-word").Select(word => word.TextContent));
    }

    [Fact]
    public void No_look_is_written_as_a_style_attribute_so_that_the_strictest_page_can_show_it() =>
        Assert.Empty(Drawn().FindAll("[style]"));

    [Fact]
    public void The_legend_tells_each_number_in_full()
    {
        var legend = Render<BoardLegend>(p => p.Add(c => c.Scene, BoardSceneMapper.Map(Problem, Rig, PictureWidth.Narrow)).Add(c => c.Leads, []));

        Assert.Equal(["1 tuner Tuner outlet 5, 9 V", "2 echo Delay"], legend.FindAll("li").Select(line => string.Join(' ', line.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))));
    }

    [Fact]
    public void The_legend_names_the_lead_behind_each_letter_alike_ones_together()
    {
        var legend = Render<BoardLegend>(p => p.Add(c => c.Scene, BoardSceneMapper.Map(Problem, Rig)).Add(c => c.Leads,
        [
            new("", "guitar", "1 a, input", "6 m", "Stage lead, 6 m", false),
            new("a", "1 a, output", "2 b, input", "12 cm", "Short patch, 15 cm", false),
            new("b", "2 b, output", "3 c, input", "22 cm", "buy 30 cm", true),
            new("c", "3 c, output", "4 d, input", "14 cm", "Short patch, 15 cm", false),
        ]));

        Assert.Equal([("Leads a, c", "Short patch, 15 cm"), ("Lead b", "missing: buy 30 cm")], legend.FindAll("dt").Zip(legend.FindAll("dd"), (letters, take) => (letters.TextContent, take.TextContent)));
    }

    private IRenderedComponent<BoardSvg> Drawn() =>
        Render<BoardSvg>(p => p.Add(c => c.Scene, BoardSceneMapper.Map(Problem, Rig)).Add(c => c.Id, "pic"));
}
