using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Planning.Fitting;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Fitting;

public sealed class ShapesTests
{
    private static readonly Gen<Jack> AnyJack = Gen.Select(
        Gen.Int[0, 1].Select(i => i == 0 ? JackUse.In : JackUse.Power),
        Gen.Int[0, 3].Select(i => (Side)i),
        Gen.Int[0, 30],
        (use, side, at) => new Jack(use, side, at.Mm));

    [Fact]
    public void However_a_thing_is_turned_it_comes_in_as_many_pieces() =>
        AnyJack.Array[1, 5].Sample(jacks =>
        {
            var device = A.Device("box").Sized(30, 30).Turning(Turn.None, Turn.Quarter, Turn.Half, Turn.ThreeQuarter) with { Jacks = [.. jacks] };

            var shape = Shapes.Of(device, PlugSizes.Usual);

            return shape.Poses.Select(pose => pose.Pieces.Length).Distinct().Count() == 1;
        }, iter: 5_000);
}
