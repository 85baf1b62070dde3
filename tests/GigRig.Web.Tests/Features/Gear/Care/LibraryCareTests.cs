using System.Globalization;
using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear;
using GigRig.Web.Features.Gear.Care;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Care;

public sealed class LibraryCareTests
{
    private static readonly DateOnly Today = new(2027, 3, 6);

    [Fact]
    public void What_plays_the_same_roles_at_nearly_the_same_size_is_alike()
    {
        var meadow = Row(A.Device("Meadow").Sized(70, 122).Doing("drive.low", "boost"));
        var hill = Row(A.Device("Hill").Sized(73, 129).Doing("boost", "drive.low"));
        var wide = Row(A.Device("Wide").Sized(140, 173).Doing("boost", "drive.low"));
        var other = Row(A.Device("Other").Sized(70, 122).Doing("boost"));
        var alike = new AlikeThings([meadow, hill, wide, other]);

        Assert.Equal(["Hill"], alike.To(meadow).Select(row => row.Name));
        Assert.Equal(["Meadow"], alike.To(hill).Select(row => row.Name));
        Assert.Empty(alike.To(wide));
        Assert.Empty(alike.To(other));
    }

    [Theory]
    [InlineData(85, 137, true)]
    [InlineData(86, 122, false)]
    [InlineData(122, 70, true)]
    public void Nearly_means_fifteen_millimetres_each_way_turned_or_not(int width, int depth, bool near)
    {
        var meadow = Row(A.Device("Meadow").Sized(70, 122).Doing("delay"));
        var other = Row(A.Device("Other").Sized(width, depth).Doing("delay"));

        Assert.Equal(near, new AlikeThings([meadow, other]).To(meadow).Count > 0);
    }

    [Fact]
    public void Things_without_a_role_and_things_of_other_kinds_are_not_alike()
    {
        var alike = new AlikeThings([Row(A.Device("A")), Row(A.Device("B")), Row(A.Device("Tuner").Doing("tuner")), Row(A.OffBoard("Clip").Doing("tuner"))]);

        Assert.Empty(alike.To(Row(A.Device("A"))));
    }

    [Fact]
    public void What_no_saved_rig_uses_is_never_used()
    {
        var (used, spare, lead) = (Row(A.Device("Used")), Row(A.Device("Spare")), Row(A.Lead()));
        var care = new LibraryCare([used, spare, lead], new HashSet<GearId> { Stored.GearIdOf(used.Id) }, Today);

        Assert.Equal([false, true, false], new[] { used, spare, lead }.Select(care.IsNeverUsed));
    }

    [Fact]
    public void A_thing_is_overdue_the_day_after_it_is_due()
    {
        bool Overdue(GearStatus status, DateOnly? back) => new LibraryCare([], new HashSet<GearId>(), Today).IsOverdue(Row(A.Device("x"), new(status) { BackOn = back }));

        Assert.False(Overdue(GearStatus.LentOut, Today));
        Assert.True(Overdue(GearStatus.LentOut, Today.AddDays(-1)));
        Assert.False(Overdue(GearStatus.Ready, Today.AddDays(-1)));
        Assert.False(Overdue(GearStatus.LentOut, null));
    }

    [Fact]
    public void Values_are_summed_and_what_has_none_is_counted()
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("en-GB");
        GearRow[] rows = [Row(A.Device("a"), new(ValueCents: 100_050)), Row(A.Device("b"), new(ValueCents: 1000_000_000)), Row(A.Device("c"))];

        Assert.Equal("worth 10,001,000.50 together, 1 thing without a value", ValueTotal.Of(rows).Sentence(3));
        Assert.Equal("", ValueTotal.Of(rows[2..]).Sentence(1));
        Assert.Equal("worth 0 together", ValueTotal.Of([Row(A.Device("d"), new(ValueCents: 0))]).Sentence(1));
    }

    internal static GearRow Row<T>(T thing, Ownership? ownership = null)
        where T : class =>
        GearRow.Of(new Stored<OwnedGear<T>>(Guid.NewGuid(), 1, new(thing, ownership ?? new())), one => one switch { Device d => d.Name, OffBoardItem o => o.Name, Lead l => l.Name, _ => "" });
}
