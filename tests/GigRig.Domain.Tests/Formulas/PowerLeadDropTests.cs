using GigRig.Domain.Formulas;

namespace GigRig.Domain.Tests.Formulas;

public sealed class PowerLeadDropTests
{
    private const double Feet = PowerLeadDrop.MetresPerFoot;

    /// <summary>An electrician's text with a wiring code's table: 100 ft of 4.99 Ω per 1000 ft at 4 A lose 4.0 V.</summary>
    [Fact]
    public void A_hundred_feet_of_4_99_ohms_per_thousand_at_4_A_lose_4_volts() =>
        Assert.Equal(4.0, PowerLeadDrop.Volts(100 * Feet, 4.99 / (1000 * Feet), 4), 0.05);

    /// <summary>The same text: 4.0 V of 24 V are 16.7 %.</summary>
    [Fact]
    public void Four_volts_of_24_are_a_sixth() => Assert.Equal(0.167, PowerLeadDrop.Part(4, 24), 0.0005);

    /// <summary>A physics reference table after Floyd, Electric Circuit Fundamentals: 24 AWG has 84.2 Ω/km. Tables differ by half a per cent.</summary>
    [Fact]
    public void The_wire_of_24_gauge_is_that_of_the_table() => Assert.Equal(84.2, PowerLeadDrop.Awg24 * 1000, 84.2 * 0.01);

    /// <summary>Computed here from the table.</summary>
    [Theory]
    [InlineData(0.5, 0.5, 0.042)]
    [InlineData(1, 0.5, 0.084)]
    public void A_board_lead_loses_next_to_nothing(double metres, double amps, double volts) =>
        Assert.Equal(volts, PowerLeadDrop.Volts(metres, PowerLeadDrop.Awg24, amps), 0.0005);
}
