using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear;

public sealed class GearRowTests
{
    [Fact]
    public void A_supply_says_what_its_outlets_give_alike_ones_counted()
    {
        var supply = A.Draft().FedBy(A.Outlet("1"), A.Outlet("2").Giving(500), A.Outlet("3")).Supply!;

        Assert.Equal("2 × 9 V 100 mA, 1 × 9 V 500 mA", Facts(supply));
        Assert.Equal("2 × 9 V 100 mA, 1 × 9 V 500 mA · 600 mA in all", Facts(supply with { TotalCurrent = 600.MilliA }));
    }

    [Theory]
    [InlineData(6000, LengthUnit.Millimetres, "Instrument · 6 m · × 2")]
    [InlineData(150, LengthUnit.Millimetres, "Instrument · 15 cm · × 2")]
    [InlineData(150, LengthUnit.Inches, "Instrument · 6 in · × 2")]
    public void A_lead_is_as_long_as_leads_are_sold(int length, LengthUnit unit, string facts) =>
        Assert.Equal(facts, Facts(A.Lead() with { Kind = LeadKind.Instrument, Length = length.Mm, Count = 2 }, unit));

    private static string Facts(object thing, LengthUnit unit = LengthUnit.Millimetres) =>
        new GearRow(GearKind.Of<Device>(), Guid.Empty, 1, "thing", thing, new()).Facts(unit);
}
