using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class SoundCheckTests
{
    [Fact]
    public void Two_sounds_of_one_name_are_refused() => Complain.About(
        Complain.Fine.Playing("Solo", "drive").Playing("Solo", "delay"),
        "/event/sounds/1/name", "Solo", "once", "Sound Solo is there twice; give each sound a name of its own.");

    [Fact]
    public void A_sound_of_nothing_is_refused() => Complain.About(
        Complain.Fine.Playing("Solo"),
        "/event/sounds/0/roles", "nothing", "1 to 16", "Sound Solo has no roles; give 1 to 16.");

    [Fact]
    public void A_role_asked_for_twice_is_refused() => Complain.About(
        Complain.Fine.Playing("Solo", "drive", "delay", "drive"),
        "/event/sounds/0/roles/2", "drive", "once", "Sound Solo asks for drive twice; keep one.");

    [Fact]
    public void Sixteen_roles_are_allowed_and_seventeen_are_not()
    {
        string[] roles = [.. Enumerable.Range(0, 17).Select(i => $"r{i}")];
        Complain.Nothing(Complain.Fine.Playing("Wall", roles[..16]));
        Complain.About(Complain.Fine.Playing("Wall", roles), "/event/sounds/0/roles", "17", "at most 16", "Sound Wall has 17 roles; give at most 16.");
    }

    [Fact]
    public void A_weight_out_of_range_is_refused() => Complain.About(
        Complain.Fine.WantingSound("Solo", 0, "drive"),
        "/event/sounds/0/weight", "0", "1 to 1000000", "The weight of sound Solo is 0; give 1 to 1000000.");

    [Fact]
    public void A_malformed_role_is_refused() =>
        Assert.Equal("/event/sounds/0/roles/0", Assert.Single(Complain.All(Complain.Fine.Playing("Solo", "Dr ive"))).Path);
}
