using CsCheck;
using GigRig.Domain.Formulas;
using GigRig.Domain.Units;

namespace GigRig.Domain.Tests.Formulas;

public sealed class PickupCircuitTests
{
    private const double NoLoad = 1e15;

    /// <summary>A lead maker's article on pickups: 2.4 H with 300 pF about 6000 Hz, with 2400 pF (a coiled lead) just above 2000 Hz.</summary>
    [Theory]
    [InlineData(2.4, 300, 6000)]
    [InlineData(2.4, 2400, 2050)]
    public void Loaded_resonances_of_an_article(double henries, double picofarads, double hertz) =>
        Assert.Equal(hertz, Of(henries, picofarads).Resonance, hertz * 0.03);

    /// <summary>LaForest, measuring pickups: 100 mH resonate at 100 kHz with 25.33 pF, and with 210 Ω the quality is 299.20.</summary>
    [Fact]
    public void A_measured_coil()
    {
        var coil = Of(0.1, 25.33, ohms: 210);

        Assert.Equal(100_000, coil.Resonance, 10.0);
        Assert.Equal(299.20, coil.CoilQ, 0.05);
        Assert.Equal(coil.CoilQ, coil.LoadedQ, 0.001);
    }

    /// <summary>Computed here from 120 pF of winding and 125 pF a metre.</summary>
    [Theory]
    [InlineData(2.4, 3, 4618)]
    [InlineData(2.4, 6, 3483)]
    [InlineData(2.4, 9, 2912)]
    [InlineData(4.4, 3, 3410)]
    [InlineData(4.4, 6, 2572)]
    [InlineData(4.4, 9, 2150)]
    public void Longer_leads_pull_it_down(double henries, int metres, double hertz) =>
        Assert.Equal(hertz, Of(henries, (double)CableCapacitance.Total(120, [CableCapacitance.OfLead((1000 * metres).Mm, 125)])).Resonance, 0.5);

    /// <summary>H. Lemme, as quoted: magnetic pickups have 1–10 H, 300–1000 pF of lead on them, resonate mostly at 2–5 kHz and peak by 0–12 dB.</summary>
    [Fact]
    public void A_usual_pickup_on_a_usual_lead_lies_where_pickups_lie()
    {
        var usual = new PickupCircuit(3.4, 6700, 620e-12, PickupCircuit.Parallel(250e3, 1e6));

        Assert.InRange(usual.Resonance, 2000, 5000);
        Assert.InRange(usual.DecibelsAt(usual.Resonance), 0, 12);
    }

    /// <summary>The textbook's second-order low-pass: flat below, its quality at resonance, 12 dB an octave above.</summary>
    [Fact]
    public void It_is_a_second_order_low_pass() => Gen
        .Select(Gen.Double[1, 10], Gen.Double[1e3, 12e3], Gen.Double[100, 2000], (henries, ohms, picofarads) => Of(henries, picofarads, ohms))
        .Sample(circuit =>
        {
            var at = circuit.Resonance;
            Assert.Equal(0, circuit.DecibelsAt(at / 1000), 0.01);
            Assert.Equal(Decibels.OfVoltages(circuit.LoadedQ), circuit.DecibelsAt(at), 0.01);
            Assert.Equal(-12.04, circuit.DecibelsAt(at * 2000) - circuit.DecibelsAt(at * 1000), 0.01);
        });

    [Fact]
    public void A_heavier_load_only_ever_damps() => Gen
        .Select(Gen.Double[1, 10], Gen.Double[100, 2000], Gen.Double[50e3, 1e6], Gen.Double[1.01, 10])
        .Sample((henries, picofarads, load, times) =>
        {
            var (light, heavy) = (new PickupCircuit(henries, 7000, picofarads * 1e-12, load * times), new PickupCircuit(henries, 7000, picofarads * 1e-12, load));
            return heavy.DecibelsAt(heavy.Resonance) < light.DecibelsAt(light.Resonance);
        });

    [Fact]
    public void Resistances_side_by_side() => Assert.Equal(200e3, PickupCircuit.Parallel(250e3, 1e6), 1e-6);

    private static PickupCircuit Of(double henries, double picofarads, double ohms = 7000) => new(henries, ohms, picofarads * 1e-12, NoLoad);
}
