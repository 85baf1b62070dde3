using GigRig.Domain.Formulas;
using GigRig.Domain.Units;

namespace GigRig.Domain.Tests.Formulas;

public sealed class BatteryLifeTests
{
    /// <summary>A device maker's note on batteries, with these numbers (common practice).</summary>
    [Theory]
    [InlineData(500, 5, 100)]
    [InlineData(500, 100, 5)]
    public void Capacity_over_draw_is_the_time(double capacity, double draw, double hours) =>
        Assert.Equal(hours, BatteryLife.Hours(capacity, draw), 9);

    /// <summary>Another maker's note: 310 mAh at 70 mA "about 3", at 150 mA "about 1.4" hours (common practice).</summary>
    [Theory]
    [InlineData(310, 70, 3.1)]
    [InlineData(310, 150, 1.4)]
    public void Under_load_a_part_is_lost(double capacity, double draw, double hours) =>
        Assert.Equal(hours, BatteryLife.DeratedHours(capacity, draw), 0.05);

    /// <summary>The two notes lie apart by this much at any draw; computed from their numbers.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(170)]
    public void The_two_notes_differ_by_a_factor_of_2_3(int draw)
    {
        var range = BatteryLife.Range(capacity: null, draw.MilliA);

        Assert.Equal(2.3, range.Most / range.Least, 0.05);
    }

    [Fact]
    public void A_known_capacity_narrows_the_range_to_the_derating() =>
        Assert.Equal(new HoursRange(35, 50), BatteryLife.Range(500, 10.MilliA));

    [Theory]
    [InlineData(0, 5)]
    [InlineData(500, 0)]
    public void Nothing_to_divide_by_is_refused(double capacity, double draw) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BatteryLife.Hours(capacity, draw));
}
