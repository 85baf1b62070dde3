using GigRig.Domain.Units;
using GigRig.Domain.Wishes;

namespace GigRig.Domain.Tests.Wishes;

public sealed class ScoreTests
{
    private static readonly Score Plain = new(10, 5, 3, 1000.G, 500.Mm);

    [Fact]
    public void Each_tier_outweighs_all_later_ones()
    {
        Assert.True(Plain.CompareTo(new(9, 99, 0, 0.G, 0.Mm)) > 0);
        Assert.True(Plain.CompareTo(new(10, 4, 0, 0.G, 0.Mm)) > 0);
        Assert.True(Plain.CompareTo(new(10, 5, 4, 0.G, 0.Mm)) > 0);
        Assert.True(Plain.CompareTo(new(10, 5, 3, 1001.G, 0.Mm)) > 0);
        Assert.True(Plain.CompareTo(new(10, 5, 3, 1000.G, 501.Mm)) > 0);
        Assert.True((Plain with { Reach = 7 }).CompareTo(Plain with { Reach = 8, Fronts = 0 }) > 0);
        Assert.True((Plain with { Reach = 7, Fronts = 1 }).CompareTo(Plain with { Reach = 7, Fronts = 2 }) > 0);
    }

    [Fact]
    public void Where_things_stand_does_not_count_in_the_choice() => Assert.Equal(0, Plain.CompareChoice(Plain with { Leads = 900.Mm, Reach = 7, Fronts = 3 }));
}
