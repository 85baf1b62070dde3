using GigRig.Domain.Formulas;
using GigRig.Domain.Units;

namespace GigRig.Domain.Tests.Formulas;

public sealed class CableCapacitanceTests
{
    /// <summary>An electronics article on instrument leads: 16–48 pF a foot are 52–157 pF a metre, so ten feet of them have 160–480 pF.</summary>
    [Theory]
    [InlineData(52, 160)]
    [InlineData(157, 480)]
    public void Ten_feet_are_as_published(int perMetre, int picofarads) =>
        Assert.Equal(picofarads, (double)CableCapacitance.OfLead(3048.Mm, perMetre), picofarads * 0.01);

    /// <summary>The same article: 3 m with plugs come to 600 pF at most, so 200 pF/m is the top of what is met.</summary>
    [Fact]
    public void Three_metres_of_the_worst_lead_are_600_picofarads() => Assert.Equal(600, CableCapacitance.OfLead(3000.Mm, 200));

    [Fact]
    public void Winding_leads_and_boxes_add_up() => Assert.Equal(120 + 375 + 40, CableCapacitance.Total(120, [375, 40]));
}
