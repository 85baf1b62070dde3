using GigRig.Domain.Gear;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

/// <summary>Needs, sounds, limits, pins and bans.</summary>
public sealed class PlayingTests
{
    [Fact]
    public async Task A_narrower_role_meets_a_wider_need_and_not_the_other_way_round()
    {
        await Ask.Best(A.Draft().With(A.Device("fuzz").Doing("drive.high")).Needing("drive"));
        await Ask.Impossible(A.Draft().With(A.Device("fuzz").Doing("drive")).Needing("drive.high"));
    }

    [Fact]
    public async Task The_amp_and_off_board_things_cover_musts_without_room()
    {
        var draft = A.Draft(A.Board(10, 10)).Through(A.Amp().WithChannels("drive")).With(A.OffBoard("clip").Doing("tuner")).Needing("drive", "tuner");

        var best = await Ask.Best(draft);

        Assert.Equal("clip", Assert.Single(best.Rig.OffBoard).Value);
    }

    [Fact]
    public async Task A_sound_is_not_played_by_two_channels_of_one_amp()
    {
        var amp = A.Draft().Through(A.Amp().WithChannels("drive", "clean")).Needing("drive", "clean");

        await Ask.Best(amp);
        await Ask.Impossible(amp.Playing("both", "drive", "clean"));
    }

    [Fact]
    public async Task A_sound_takes_a_second_box_where_one_has_its_roles_either_or()
    {
        var draft = A.Draft()
            .With(A.Device("multi").DoingOneOf("mode", "delay", "reverb"), A.Device("hall").Doing("reverb"))
            .Needing("delay", "reverb");

        Assert.Equal(1, (await Ask.Best(draft)).Score.Devices);
        Assert.Equal(2, (await Ask.Best(draft.Playing("wash", "delay", "reverb"))).Score.Devices);
        Assert.Equal(1, (await Ask.Best(draft.WantingSound("wash", 5, "delay", "reverb").Limited(devices: 1))).Score.Devices);
    }

    [Fact]
    public async Task One_function_may_meet_two_roles_of_a_sound() =>
        await Ask.Best(A.Draft().With(A.Device("fuzz").Doing("drive.high")).Playing("lead", "drive", "drive.high"));

    [Fact]
    public async Task The_mass_limit_counts_all_that_is_carried()
    {
        // Board 2000, amp 15 000, device 500 g.
        var draft = A.Draft().Through(A.Amp()).With(A.Device("echo").Doing("delay")).Needing("delay");

        await Ask.Best(draft.Limited(mass: 17_500));
        await Ask.Impossible(draft.Limited(mass: 17_499));
    }

    [Fact]
    public async Task The_limit_on_boxes_does_not_count_what_stands_beside_the_board()
    {
        var draft = A.Draft().With(A.Device("echo").Doing("delay")).With(A.OffBoard("clip").Doing("tuner")).Needing("delay", "tuner");

        await Ask.Best(draft.Limited(devices: 1));
        await Ask.Impossible(draft.Limited(devices: 0));
    }

    [Fact]
    public async Task A_pinned_thing_comes_along_though_it_brings_nothing()
    {
        var best = await Ask.Best(A.Draft().With(A.Device("brick")).With(A.OffBoard("clip")).Pinning("brick", "clip"));

        Assert.True(best.Rig.Holds(new GearId("brick")));
        Assert.True(best.Rig.Holds(new GearId("clip")));
    }

    [Fact]
    public async Task A_pinned_thing_that_cannot_stand_makes_it_impossible() =>
        await Ask.Impossible(A.Draft(A.Board(99, 100)).With(A.Device("brick")).Pinning("brick"));

    [Fact]
    public async Task A_pinned_amp_comes_along_as_it_does_anyway() =>
        await Ask.Best(A.Draft().Through(A.Amp()).Pinning("amp"));

    [Fact]
    public async Task A_banned_thing_stays_at_home_and_the_next_best_comes()
    {
        var draft = A.Draft().With(A.Device("echo").Rated("delay", 5), A.Device("tape").Rated("delay", 2)).Needing("delay");

        Assert.Equal((5, 2), ((await Ask.Best(draft)).Score.Rating, (await Ask.Best(draft.Banning("echo"))).Score.Rating));
        await Ask.Impossible(draft.Banning("echo", "tape"));
    }

    [Fact]
    public async Task Off_board_things_can_be_banned() =>
        await Ask.Impossible(A.Draft().With(A.OffBoard("clip").Doing("tuner")).Needing("tuner").Banning("clip"));
}
