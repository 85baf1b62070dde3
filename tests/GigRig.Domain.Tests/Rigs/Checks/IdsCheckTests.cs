using GigRig.Domain.Gear;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class IdsCheckTests
{
    [Fact]
    public void Two_devices_of_one_id_are_refused() => Complain.About(
        A.Draft().With(A.Device("a"), A.Device("b"), A.Device("a")),
        "/devices/2/id", "a", "once", "The id \"a\" of /devices/2 is taken by /devices/0; give each thing an id of its own.");

    [Fact]
    public void Ids_are_unique_over_all_kinds_of_things() => Assert.Equal(
        ["/devices/0/id", "/devices/1/id", "/offBoard/0/id"],
        Complain.All(A.Draft().FedBy(A.Supply()).Through(A.Amp()).With(A.Device("board"), A.Device("amp")).With(A.OffBoard("supply"))).Select(complaint => complaint.Path));

    [Fact]
    public void An_id_of_nothing_is_refused() => Complain.AboutDevice(
        device => device with { Id = new("") },
        "/devices/0/id", "nothing", "1 to 100 characters", "The id of /devices/0 is empty; give 1 to 100 characters.");

    [Fact]
    public void An_id_of_101_characters_is_refused() => Complain.AboutDevice(
        device => device with { Id = new(new string('x', 101)) },
        "/devices/0/id", new string('x', 40) + "…", "1 to 100 characters", "The id of /devices/0 has 101 characters; give at most 100.");

    [Fact]
    public void Upper_and_lower_case_make_two_ids() => Complain.Nothing(A.Draft().With(A.Device("a"), A.Device("A")));
}
