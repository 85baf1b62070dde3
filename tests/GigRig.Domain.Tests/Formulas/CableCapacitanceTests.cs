using GigRig.Domain.Formulas;

namespace GigRig.Domain.Tests.Formulas;

public sealed class CableCapacitanceTests
{
    /// <summary>
    /// An electronics article on instrument leads: 16–48 pF a foot are 52–157 pF a metre.
    /// </summary>
    [Theory]
    [InlineData(16, 52)]
    [InlineData(48, 157)]
    public void A_metre_is_as_published_per_foot(double perFoot, double perMetre) =>
        Assert.Equal(perMetre, CableCapacitance.OfLead(1 / PowerLeadDrop.MetresPerFoot, perFoot), 0.6);

    /// <summary>The same article: 3 m with plugs come to 600 pF at most, so 200 pF/m is the top of what is met.</summary>
    [Fact]
    public void Three_metres_of_the_worst_lead_are_600_picofarads() => Assert.Equal(600, CableCapacitance.OfLead(3, 200), 9);

    [Fact]
    public void Winding_leads_and_boxes_add_up() => Assert.Equal(120 + 375 + 40, CableCapacitance.Total(120, [375, 40]));
}
