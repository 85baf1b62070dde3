using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class LeadCheckTests
{
    [Theory]
    [InlineData(0, "0 mm")]
    [InlineData(100_001, "100001 mm")]
    public void A_length_out_of_range_is_refused(int length, string shown) => About(
        lead => lead with { Length = length.Mm },
        "/leads/0/length", $"{length}", "1 to 100000 mm", $"The length of lead patch is {shown}; give 1 to 100000 mm.");

    [Theory]
    [InlineData(0)]
    [InlineData(1000)]
    public void A_count_out_of_range_is_refused(int count) => About(
        lead => lead with { Count = count },
        "/leads/0/count", $"{count}", "1 to 999", $"The count of lead patch is {count}; give 1 to 999.");

    [Fact]
    public void A_capacitance_of_nothing_is_refused() => About(
        lead => lead with { Capacitance = 0 },
        "/leads/0/capacitance", "0", "1 to 10000 pF/m", "The capacitance of lead patch is 0 pF/m; give 1 to 10000 pF/m.");

    [Fact]
    public void A_kind_outside_the_known_ones_is_refused() => About(
        lead => lead with { Kind = (LeadKind)9 },
        "/leads/0/kind", "9", "patch, instrument, loop, power", "The kind of lead patch is 9; give one of patch, instrument, loop, power.");

    [Fact]
    public void The_ends_of_the_ranges_are_allowed() => Complain.Nothing(Complain.Fine with
    {
        Leads = [A.Lead("a") with { Length = 1.Mm, Count = 1, Capacitance = 1 }, A.Lead("b") with { Length = 100_000.Mm, Count = 999, Capacitance = 10_000 }],
    });

    [Fact]
    public void A_lead_takes_no_id_of_another_thing() => Complain.About(
        Complain.Fine with { Leads = [A.Lead("echo")] },
        "/leads/0/id", "echo", "once", "The id \"echo\" of /leads/0 is taken by /devices/0; give each thing an id of its own.");

    private static void About(Func<Lead, Lead> spoil, string path, string value, string limit, string message) =>
        Complain.About(Complain.Fine with { Leads = [spoil(A.Lead("patch"))] }, path, value, limit, message);
}
