using CsCheck;
using GigRig.Benchmarks.Opponents;
using GigRig.Domain.Geometry;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests.Benchmarks;

public sealed class ApartPiecesTests
{
    [Fact]
    public void Keep_outs_that_overlap_become_pieces_that_do_not_and_cover_the_same() =>
        GenMany.Each(4, _ => Piece).Sample(rects =>
        {
            var pieces = ApartPieces.Of(rects);

            Assert.Equal(Cells(rects).ToHashSet().Order(), Cells(pieces).Order());
        });

    private static Gen<Rect> Piece { get; } =
        GenGear.Device(0).Select(device => new Rect(device.Size.Height, device.Size.Width, device.Size.Width, device.Size.Depth));

    /// <summary>The square millimetres covered, each as often as it is.</summary>
    private static IEnumerable<(int X, int Y)> Cells(IEnumerable<Rect> rects) =>
        from rect in rects
        from x in Enumerable.Range(rect.X.Value, rect.Width.Value)
        from y in Enumerable.Range(rect.Y.Value, rect.Depth.Value)
        select (x, y);
}
