using GigRig.Domain.Units;
using GigRig.Web.Features.Rigs.Links;
using Xunit;

namespace GigRig.Web.Tests.Features.Rigs.Links;

public sealed class LinkFormTests
{
    private static readonly DateTime Now = new(2027, 1, 31, 20, 0, 0, DateTimeKind.Utc);

    [Fact]
    public void Unless_something_is_ticked_nothing_is_told()
    {
        var link = new LinkForm().ToLink(Now, version: 7, LengthUnit.Millimetres);

        Assert.Equal(new(), link.Content);
        Assert.Null(link.Frozen);
    }

    [Fact]
    public void What_is_ticked_is_told_in_the_owners_unit_of_the_version_at_hand() =>
        Assert.Equal(
            new("Engineer", Content: new(Notes: true, Values: true, Places: true, Unit: LengthUnit.Inches), Frozen: 7),
            new LinkForm { Name = " Engineer ", Time = LinkTime.UntilRevoked, Frozen = true, Notes = true, Values = true, Places = true }.ToLink(Now, version: 7, LengthUnit.Inches));

    [Theory]
    [InlineData(LinkTime.Day, "2027-02-01")]
    [InlineData(LinkTime.Week, "2027-02-07")]
    [InlineData(LinkTime.Month, "2027-02-28")]
    [InlineData(LinkTime.Year, "2028-01-31")]
    public void It_ends_when_it_says(LinkTime time, string day) =>
        Assert.Equal(DateTime.Parse(day, System.Globalization.CultureInfo.InvariantCulture).AddHours(20), new LinkForm { Time = time }.ToLink(Now, 1, LengthUnit.Millimetres).ExpiresUtc);
}
