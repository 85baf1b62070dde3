using GigRig.Domain.Formulas;

namespace GigRig.Domain.Tests.Formulas;

public sealed class DecibelsTests
{
    /// <summary>A published converter of decibels: twice the voltage 6.02 dB, ten times 20 dB.</summary>
    [Theory]
    [InlineData(2, 6.02)]
    [InlineData(10, 20)]
    public void Ratios_of_voltages(double ratio, double decibels) => Assert.Equal(decibels, Decibels.OfVoltages(ratio), 0.005);

    /// <summary>Two exercise pages on filters: at the corner 1/√2 is left, −3.01 dB.</summary>
    [Fact]
    public void What_is_left_at_a_corner() => Assert.Equal(-3.01, Decibels.OfVoltages(1 / Math.Sqrt(2)), 0.005);
}
