using GigRig.Domain.Geometry;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

public sealed class PlacesSheetTests
{
    [Fact]
    public void It_says_where_each_thing_stands_by_the_numbers_of_the_drawing()
    {
        var problem = A.Draft().With(A.Device("echo"), A.Device("fuzz")).Problem();
        var rig = A.Rig().Placing("echo", 254, 20).Placing("fuzz", 0, 0, Turn.Quarter).Chained("fuzz echo");

        Assert.Equal(
            [new(1, "fuzz", "0 mm", "0 mm", "90° clockwise"), new(2, "echo", "254 mm", "20 mm", "")],
            PlacesSheet.Of(problem, rig, LengthUnit.Millimetres).Lines);
        Assert.Equal("10 in", PlacesSheet.Of(problem, rig, LengthUnit.Inches).Lines[1].Left);
    }
}
