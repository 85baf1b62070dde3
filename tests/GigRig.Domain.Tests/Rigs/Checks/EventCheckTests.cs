using GigRig.Domain.Events;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class EventCheckTests
{
    [Fact]
    public void A_role_needed_twice_is_refused() => Complain.About(
        Complain.Fine.Needing("delay").Wanting("delay"),
        "/event/needs/1/role", "delay", "once", "delay is needed twice; keep one.");

    [Fact]
    public void A_wider_and_a_narrower_need_are_two_needs() => Complain.Nothing(Complain.Fine.Needing("drive", "drive.high"));

    [Theory]
    [InlineData(0)]
    [InlineData(1_000_001)]
    public void A_weight_goes_from_one_to_a_million(int weight) => Complain.About(
        Complain.Fine.Wanting("delay", weight),
        "/event/needs/0/weight", $"{weight}", "1 to 1000000", $"The weight of need 1 is {weight}; give 1 to 1000000.");

    [Fact]
    public void Two_hundred_and_one_needs_are_too_many() => Complain.About(
        Complain.Fine.Needing([.. Enumerable.Range(0, 201).Select(i => $"r{i}")]),
        "/event/needs", "201", "at most 200", "The event has 201 needs; give at most 200.");

    [Fact]
    public void A_hundred_and_one_sounds_are_too_many() => Complain.About(
        Enumerable.Range(0, 101).Aggregate(Complain.Fine, (draft, i) => draft.Playing($"s{i}", "delay")),
        "/event/sounds", "101", "at most 100", "The event has 101 sounds; give at most 100.");

    [Theory]
    [InlineData(-1)]
    [InlineData(101)]
    public void A_free_area_is_a_percentage(int percent) => Complain.About(
        Complain.Fine.Limited(freeArea: percent),
        "/event/limits/freeArea", $"{percent}", "0 to 100 %", $"The free area is {percent} %; give 0 to 100 %.");

    [Fact]
    public void Limits_below_nothing_are_refused()
    {
        Complain.About(Complain.Fine.Limited(mass: -1), "/event/limits/mass", "-1", "0 to 10000000 g", "The limit on mass is -1 g; give 0 to 10000000 g.");
        Complain.About(Complain.Fine.Limited(devices: -1), "/event/limits/devices", "-1", "0 to 1000", "The limit on devices is -1; give 0 to 1000.");
    }

    [Fact]
    public void A_level_that_is_no_level_is_refused() => Complain.About(
        Complain.Fine with { Event = A.Event() with { Needs = [new(new("delay"), (NeedLevel)5)] } },
        "/event/needs/0/level", "5", "must, want", "The level of need 1 is 5; give one of must, want.");
}
