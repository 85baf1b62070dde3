using GigRig.Domain.Formulas;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;

namespace GigRig.Domain.Tests.Formulas;

public sealed class JoinedOutletsTests
{
    /// <summary>A power-supply maker's glossary, term "Series": 24 V / 10 A and 12 V / 20 A make 36 V / 10 A.</summary>
    [Fact]
    public void In_series_volts_add_and_the_lesser_current_counts()
    {
        Assert.Equal(36.V, JoinedOutlets.Volts(OutletJoin.Series, [24.V, 12.V]));
        Assert.Equal(10_000.MilliA, JoinedOutlets.Current(OutletJoin.Series, [10_000.MilliA, 20_000.MilliA]));
    }

    /// <summary>Bench-supply note "Connect power supplies in series or parallel": the load gets I₁ + I₂. The numbers are computed from it.</summary>
    [Fact]
    public void In_parallel_currents_add_at_one_voltage()
    {
        Assert.Equal(9.V, JoinedOutlets.Volts(OutletJoin.Parallel, [9.V, 9.V]));
        Assert.Equal(200.MilliA, JoinedOutlets.Current(OutletJoin.Parallel, [100.MilliA, 100.MilliA]));
    }

    [Theory]
    [InlineData(OutletJoin.Single)]
    [InlineData(OutletJoin.Parallel)]
    [InlineData(OutletJoin.Series)]
    public void Nothing_joined_gives_nothing(OutletJoin join) =>
        Assert.Equal((Millivolts.Zero, Milliamps.Zero), (JoinedOutlets.Volts(join, []), JoinedOutlets.Current(join, [])));
}
