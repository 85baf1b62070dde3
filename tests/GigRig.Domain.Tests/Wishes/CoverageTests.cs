using GigRig.Domain.Gear;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wishes;

public sealed class CoverageTests
{
    [Fact]
    public void A_need_goes_to_the_best_rated_thing()
    {
        var problem = A.Draft().With(A.Device("plain").Rated("delay", 2), A.Device("fine").Rated("delay", 5)).Needing("delay").Problem();

        var coverage = Coverage.Of(problem, A.Rig().Placing("plain", 0, 0).Placing("fine", 200, 0));

        Assert.Equal(new GearId("fine"), Assert.Single(coverage.Needs).Cover?.Thing);
    }

    [Fact]
    public void Among_equals_the_first_in_the_problem_covers_whatever_the_order_of_placing()
    {
        var problem = A.Draft().With(A.Device("first").Doing("delay"), A.Device("second").Doing("delay")).Needing("delay").Problem();

        var coverage = Coverage.Of(problem, A.Rig().Placing("second", 200, 0).Placing("first", 0, 0));

        Assert.Equal(new GearId("first"), Assert.Single(coverage.Needs).Cover?.Thing);
    }

    [Fact]
    public void A_device_left_at_home_covers_nothing()
    {
        var problem = A.Draft().With(A.Device("echo").Doing("delay")).Needing("delay").Problem();
        Assert.Null(Assert.Single(Coverage.Of(problem, A.Rig()).Needs).Cover);
    }

    [Fact]
    public void The_amp_always_counts_and_off_board_things_when_brought()
    {
        var problem = A.Draft().Through(A.Amp().WithChannels("clean")).With(A.OffBoard("clip").Doing("tuner")).Needing("clean", "tuner").Problem();

        Assert.Equal([new GearId("amp"), null], Coverage.Of(problem, A.Rig()).Needs.Select(n => n.Cover?.Thing));
        Assert.Equal([new GearId("amp"), new GearId("clip")], Coverage.Of(problem, A.Rig().Bringing("clip")).Needs.Select(n => n.Cover?.Thing));
    }

    [Fact]
    public void Channels_of_one_amp_cannot_sound_together()
    {
        var problem = A.Draft().Through(A.Amp().WithChannels("clean", "drive")).Playing("both", "clean", "drive").Problem();
        Assert.Null(Assert.Single(Coverage.Of(problem, A.Rig()).Sounds).Covers);
    }

    [Fact]
    public void A_sound_takes_the_second_best_where_the_best_is_busy_in_its_section()
    {
        var problem = A.Draft()
            .With(A.Device("multi").Rated("delay", 5, "engine").Rated("reverb", 5, "engine"), A.Device("echo").Rated("delay", 1))
            .Playing("wash", "delay", "reverb").Problem();

        var covers = Assert.Single(Coverage.Of(problem, A.Rig().Placing("multi", 0, 0).Placing("echo", 200, 0)).Sounds).Covers;

        Assert.Equal([new GearId("echo"), new GearId("multi")], covers!.Value.Select(c => c.Thing));
    }

    [Fact]
    public void Different_sections_of_one_device_sound_together()
    {
        var problem = A.Draft().With(A.Device("multi").Rated("delay", 3, "a").Rated("reverb", 3, "b")).Playing("wash", "delay", "reverb").Problem();
        Assert.NotNull(Assert.Single(Coverage.Of(problem, A.Rig().Placing("multi", 0, 0)).Sounds).Covers);
    }

    [Fact]
    public void One_function_may_meet_two_roles_of_a_sound()
    {
        var problem = A.Draft().With(A.Device("hot").Rated("drive.high", 3, "only")).Playing("lead", "drive", "drive.high").Problem();

        var covers = Assert.Single(Coverage.Of(problem, A.Rig().Placing("hot", 0, 0)).Sounds).Covers;

        Assert.Equal(["drive", "drive.high"], covers!.Value.Select(c => c.Role.Key));
    }

    [Fact]
    public void Eight_either_or_boxes_cannot_play_nine_roles_but_nine_can()
    {
        string[] roles = [.. Enumerable.Range(0, 9).Select(i => $"r{i}")];
        var boxes = Enumerable.Range(0, 9).Select(i => A.Device($"b{i}").Sized(10, 10).DoingOneOf("engine", roles)).ToArray();
        var problem = A.Draft().With(boxes).Playing("all", roles).Problem();
        var eight = Enumerable.Range(0, 8).Aggregate(A.Rig(), (rig, i) => rig.Placing($"b{i}", 20 * i, 0));

        Assert.Null(Assert.Single(Coverage.Of(problem, eight).Sounds).Covers);
        Assert.Distinct(Assert.Single(Coverage.Of(problem, eight.Placing("b8", 160, 0)).Sounds).Covers!.Value.Select(c => c.Thing));
    }
}
