using GigRig.Web.Features.Gear.Quick;
using GigRig.Web.Features.Gear.Table;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Table;

public sealed class TableColumnTests
{
    [Theory]
    [InlineData("Name", LineField.Name, "")]
    [InlineData("  ITEM: ", LineField.Name, "")]
    [InlineData("Width (in)", LineField.Width, "in")]
    [InlineData("depth [mm]", LineField.Depth, "mm")]
    [InlineData("Height in cm", LineField.Height, "cm")]
    [InlineData("weight/kg", LineField.Mass, "kg")]
    [InlineData("Weight, lbs", LineField.Mass, "lbs")]
    [InlineData("Length (ft)", LineField.Depth, "ft")]
    [InlineData("Length m", LineField.Depth, "m")]
    [InlineData("Qty", LineField.Count, "")]
    [InlineData("Plugs", LineField.Plugs, "")]
    [InlineData("mA", LineField.Draw, "mA")]
    [InlineData("Current draw (A)", LineField.Draw, "A")]
    [InlineData("effect", LineField.Roles, "")]
    [InlineData("comments", LineField.Note, "")]
    [InlineData("Bought at", null, "")]
    [InlineData("", null, "")]
    public void A_heading_says_what_a_column_holds_and_in_which_unit(string heading, LineField? field, string unit) =>
        Assert.Equal(new TableColumn(heading, field, unit), TableColumn.Of(heading));

    [Theory]
    [InlineData("2.75", "2.75 in")]
    [InlineData("2 3/4", "2 3/4 in")]
    [InlineData("2½", "2½ in")]
    [InlineData("70 mm", "70 mm")]
    [InlineData("", "")]
    [InlineData("wide", "wide")]
    public void A_bare_number_takes_the_unit_of_its_column(string cell, string complete) =>
        Assert.Equal(complete, TableColumn.Of("Width (in)").Complete(cell));
}
