using GigRig.Domain.Gear;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class MainsCheckTests
{
    [Theory]
    [InlineData(49)]
    [InlineData(501)]
    public void A_mains_voltage_out_of_range_is_refused(int volts)
    {
        Complain.AboutSupply(
            supply => supply with { Mains = new(volts) },
            "/supply/mains/least", $"{volts}", "50 to 500 V", $"The least mains voltage of supply supply is {volts} V; give 50 to 500 V.");
        Complain.About(
            Complain.Fine with { Event = A.Event() with { Venue = new(volts) } },
            "/event/venue/volts", $"{volts}", "50 to 500 V", $"The mains voltage at the venue is {volts} V; give 50 to 500 V.");
    }

    [Fact]
    public void Voltages_the_wrong_way_round_are_refused() => Complain.AboutSupply(
        supply => supply with { Mains = new(240, 100) },
        "/supply/mains/most", "100 V", "at least 240 V", "Supply supply takes 240 V of mains at least and 100 V at most; swap or correct them.");

    [Fact]
    public void A_greatest_voltage_alone_is_refused() => Complain.AboutSupply(
        supply => supply with { Mains = new(Most: 240) },
        "/supply/mains/least", "nothing", "a voltage", "Supply supply has a greatest mains voltage but no least; give both, or one as the least.");

    [Fact]
    public void An_amp_without_any_watts_is_refused() => Complain.About(
        Complain.Fine.Through(A.Amp() with { Mains = new(Watts: 0) }),
        "/amp/mains/watts", "0", "1 to 10000 W", "The mains power of amp amp is 0 W; give 1 to 10000 W.");

    [Fact]
    public void A_letter_that_is_no_plug_is_refused() => Complain.AboutSupply(
        supply => supply with { Mains = new(Plug: (MainsPlug)40) },
        "/supply/mains/plug", "40", "a, b, c, d, e, f, g, h, i, j, k, l, m, n, o", "The plug of supply supply is 40; give one of a, b, c, d, e, f, g, h, i, j, k, l, m, n, o.");

    [Fact]
    public void The_ends_of_the_range_and_nothing_at_all_are_allowed()
    {
        Complain.Nothing(Complain.Fine.Through(A.Amp() with { Mains = new(50, 500, MainsPlug.O, 10_000) }));
        Complain.Nothing(Complain.Fine.Through(A.Amp() with { Mains = MainsInput.Unknown }));
    }
}
