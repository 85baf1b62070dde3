using Bunit;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;
using GigRig.Web.Drawing;
using Xunit;

namespace GigRig.Web.Tests.Drawing;

public sealed class ChainDrawingTests : BunitContext
{
    private static readonly string[] Names = ["a", "b", "c", "d", "e", "f", "g", "h", "i", "j"];

    private static readonly RigProblem Problem = A.Draft(A.Board(2000, 400)).With([.. Names.Select(name => A.Device(name).WithAudioJacks())]).Through(A.Amp().Looped()).Problem();

    [Fact]
    public void It_says_who_leads_to_whom_by_which_lead() => Assert.Equal(
        "instrument to 1 a by a long lead. 1 a to 2 b by lead a. 2 b to amp, input by a long lead. send to 3 c by a long lead. 3 c to return by a long lead.",
        Drawn(PictureWidth.Wide, "a b", "c").Description);

    [Fact]
    public void A_loop_that_nothing_runs_through_is_left_out() =>
        Assert.Equal(["instrument", "a", "amp, input"], Drawn(PictureWidth.Wide, "a").Boxes.Select(box => string.Join(' ', box.Lines)));

    [Theory]
    [InlineData(PictureWidth.Narrow)]
    [InlineData(PictureWidth.Wide)]
    public void However_long_the_chain_no_box_touches_another_no_arrow_crosses_a_box_and_all_lie_on_the_paper(PictureWidth width)
    {
        for (var inLoop = 0; inLoop <= Names.Length; inLoop++)
        {
            var drawing = Drawn(width, string.Join(' ', Names.SkipLast(inLoop)), string.Join(' ', Names.TakeLast(inLoop)));

            var boxes = drawing.Boxes.Select(box => box.Area).ToList();
            Assert.Equal(Names.Length + (inLoop > 0 ? 4 : 2), boxes.Count);
            Assert.Equal(Names.Length + (inLoop > 0 ? 2 : 1), drawing.Arrows.Count);
            Assert.All(boxes, box => Assert.Equal(drawing.Extent, drawing.Extent.Around(box)));
            Assert.Equal(boxes.Count, boxes.Distinct().Count());
            foreach (var arrow in drawing.Arrows)
            {
                Assert.All(arrow.Corners, corner => Assert.Equal(drawing.Extent, drawing.Extent.Around(corner)));
                Assert.DoesNotContain(boxes, box => arrow.Corners.Zip(arrow.Corners.Skip(1)).Any(piece => Crosses(box, piece.First, piece.Second)));
            }
        }
    }

    [Fact]
    public void The_loop_is_dashed_and_bears_the_letters_of_the_board_drawing()
    {
        var rig = A.Rig().Placing("a", 0, 0).Placing("b", 200, 0).Placing("c", 400, 0).Placing("d", 600, 0).Chained("a b", "c d");

        var drawing = ChainDrawing.Of(ChainPicture.Of(Problem, rig), PictureWidth.Wide);

        Assert.Equal(
            LeadLines.Of(Problem, rig).Select(lead => (lead.Part, lead.Mark)),
            drawing.Arrows.Where(arrow => arrow.Marks.Length > 0).Select(arrow => (arrow.Part, arrow.Marks)));
        Assert.Equal([ChainPart.Front, ChainPart.Front, ChainPart.Front, ChainPart.Loop, ChainPart.Loop, ChainPart.Loop], drawing.Arrows.Select(arrow => arrow.Part));
    }

    [Fact]
    public void It_is_an_image_with_words_and_the_numbers_of_the_board_drawing()
    {
        var svg = Render<ChainSvg>(p => p.Add(c => c.Drawing, Drawn(PictureWidth.Narrow, "a b")).Add(c => c.Id, "chain"));

        Assert.Equal(("img", "chain-title chain-words"), (svg.Find("svg").GetAttribute("role"), svg.Find("svg").GetAttribute("aria-labelledby")));
        Assert.Contains("1 a to 2 b by lead a.", svg.Find("#chain-words").TextContent, StringComparison.Ordinal);
        Assert.Equal(["1", "2"], svg.FindAll(".scene-number").Select(number => number.TextContent));
        Assert.Empty(svg.FindAll("[style]"));
    }

    private static ChainDrawing Drawn(PictureWidth width, string front, string loop = "")
    {
        var rig = $"{front} {loop}".Split(' ', StringSplitOptions.RemoveEmptyEntries).Index().Aggregate(A.Rig(), (so, stop) => so.Placing(stop.Item, stop.Index * 180, 0));
        return ChainDrawing.Of(ChainPicture.Of(Problem, rig.Chained(front, loop)), width);
    }

    private static bool Crosses(SceneArea body, SceneSpot a, SceneSpot b) =>
        Math.Max(a.X, b.X) > body.X && Math.Min(a.X, b.X) < body.Right && Math.Max(a.Y, b.Y) > body.Y && Math.Min(a.Y, b.Y) < body.Bottom;
}
