using CsCheck;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;

namespace GigRig.Domain.Tests.Geometry;

public sealed class RectTests
{
    private static readonly Gen<Rect> Any = Gen.Select(Gen.Int[-9, 9], Gen.Int[-9, 9], Gen.Int[0, 6], Gen.Int[0, 6], Mm);

    [Fact]
    public void Touching_edges_and_corners_do_not_overlap()
    {
        Assert.False(Mm(0, 0, 10, 10).Overlaps(Mm(10, 0, 5, 10)));
        Assert.False(Mm(0, 0, 10, 10).Overlaps(Mm(10, 10, 5, 5)));
        Assert.True(Mm(0, 0, 10, 10).Overlaps(Mm(9, 9, 5, 5)));
    }

    [Fact]
    public void Two_overlap_exactly_where_they_share_a_square_millimetre() =>
        Gen.Select(Any, Any).Sample((a, b) => a.Overlaps(b) == Cells(a).Intersect(Cells(b)).Any() && a.Overlaps(b) == b.Overlaps(a));

    [Fact]
    public void Four_quarter_turns_with_a_body_lead_back()
    {
        Gen.Select(Any, Gen.Int[1, 9], Gen.Int[1, 9]).Sample((rect, width, depth) =>
        {
            var (upright, lying) = (new BodySize(width.Mm, depth.Mm, 1.Mm), new BodySize(depth.Mm, width.Mm, 1.Mm));
            var twice = rect.TurnedWith(upright, Turn.Quarter).TurnedWith(lying, Turn.Quarter);
            Assert.Equal(rect.TurnedWith(upright, Turn.Half), twice);
            Assert.Equal(rect.TurnedWith(upright, Turn.ThreeQuarter), twice.TurnedWith(upright, Turn.Quarter));
            Assert.Equal(rect, twice.TurnedWith(upright, Turn.Quarter).TurnedWith(lying, Turn.Quarter));
        });
    }

    [Fact]
    public void The_middle_is_rounded_towards_the_front_left_corner() =>
        Assert.Equal(new Point(12.Mm, 21.Mm), Mm(10, 20, 5, 3).Middle);

    private static Rect Mm(int x, int y, int width, int depth) => new(x.Mm, y.Mm, width.Mm, depth.Mm);

    private static IEnumerable<(int, int)> Cells(Rect rect) =>
        from x in Enumerable.Range(rect.X.Value, rect.Width.Value)
        from y in Enumerable.Range(rect.Y.Value, rect.Depth.Value)
        select (x, y);
}
