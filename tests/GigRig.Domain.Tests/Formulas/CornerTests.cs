using GigRig.Domain.Formulas;

namespace GigRig.Domain.Tests.Formulas;

public sealed class CornerTests
{
    /// <summary>Exercise pages on resistor and capacitor filters, as printed there.</summary>
    [Theory]
    [InlineData(10e3, 1e-9, 15_915)]
    [InlineData(10e3, 100e-9, 159)]
    [InlineData(1e3, 1e-6, 159.15)]
    [InlineData(5.6e3, 4.7e-6, 6.04)]
    public void Published_exercises(double ohms, double farads, double hertz) => Assert.Equal(hertz, Corner.Hertz(ohms, farads), hertz * 0.002);

    /// <summary>Computed here: 12 m of lead of 125 pF/m after a buffer of 1 kΩ.</summary>
    [Fact]
    public void A_long_lead_after_a_buffer_stays_far_above_hearing() => Assert.Equal(106_000, Corner.Hertz(1000, 1500e-12), 200.0);
}
