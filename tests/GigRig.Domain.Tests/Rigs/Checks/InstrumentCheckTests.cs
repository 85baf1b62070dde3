using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class InstrumentCheckTests
{
    [Fact]
    public void An_instrument_says_what_kind_it_is() => About(
        instrument => instrument with { Kind = " " },
        "/instrument/kind", "nothing", "1 to 200 characters", "The kind of instrument guitar is empty; give 1 to 200 characters.");

    [Fact]
    public void A_family_outside_the_known_ones_is_refused() => About(
        instrument => instrument with { Family = (InstrumentFamily)9 },
        "/instrument/family", "9", "guitar, bass, keyboard, other", "The family of instrument guitar is 9; give one of guitar, bass, keyboard, other.");

    [Fact]
    public void A_pickup_is_within_reason()
    {
        About(
            instrument => instrument with { Pickup = new(Inductance: 0) },
            "/instrument/pickup/inductance", "0", "1 to 100000 mH", "The inductance of the pickup of instrument guitar is 0 mH; give 1 to 100000 mH.");
        About(
            instrument => instrument with { Pickup = new(Capacitance: -1) },
            "/instrument/pickup/capacitance", "-1", "0 to 100000 pF", "The capacitance of the pickup of instrument guitar is -1 pF; give 0 to 100000 pF.");
        About(
            instrument => instrument with { Pickup = new(Volume: 10_000_001) },
            "/instrument/pickup/volume", "10000001", "1 to 10000000 Ω", "The volume control of instrument guitar is 10000001 Ω; give 1 to 10000000 Ω.");
        Complain.Nothing(Complain.Fine with { Instrument = A.Instrument() with { Pickup = new(1, 0, 1, Active: true) } });
    }

    private static void About(Func<Instrument, Instrument> spoil, string path, string value, string limit, string message) =>
        Complain.About(Complain.Fine with { Instrument = spoil(A.Instrument()) }, path, value, limit, message);
}
