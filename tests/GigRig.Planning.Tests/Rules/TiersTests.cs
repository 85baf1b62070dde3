using GigRig.Domain.Gear;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

/// <summary>What <em>best</em> means: wants, then ratings, then few devices, then little mass.</summary>
public sealed class TiersTests
{
    [Fact]
    public async Task One_heavy_want_outweighs_two_light_ones()
    {
        var draft = A.Draft(A.Board(100, 100))
            .With(A.Device("echo").Doing("delay"), A.Device("multi").Doing("reverb", "tuner"))
            .Wanting("delay", 11).Wanting("reverb", 5).Wanting("tuner", 5);

        Assert.Equal(11, (await Ask.Best(draft)).Score.Wants);
    }

    [Fact]
    public async Task The_better_rated_box_comes_even_where_it_is_heavier_and_one_more()
    {
        var draft = A.Draft()
            .With(A.Device("multi").Rated("delay", 2).Rated("reverb", 2), A.Device("echo").Rated("delay", 3).Weighing(9000))
            .Wanting("delay").Wanting("reverb");

        Assert.Equal((5, 2), ((await Ask.Best(draft)).Score.Rating, (await Ask.Best(draft)).Score.Devices));
    }

    [Fact]
    public async Task Of_equal_ratings_the_fewer_boxes_come_even_where_they_are_heavier()
    {
        var draft = A.Draft()
            .With(A.Device("echo").Doing("delay").Weighing(10), A.Device("hall").Doing("reverb").Weighing(10), A.Device("multi").Doing("delay", "reverb").Weighing(9000))
            .Wanting("delay").Wanting("reverb");

        Assert.Equal("multi", Assert.Single((await Ask.Best(draft)).Rig.Placements).Id.Value);
    }

    [Fact]
    public async Task Of_as_many_boxes_the_lighter_comes()
    {
        var draft = A.Draft().With(A.Device("brick").Doing("delay").Weighing(501), A.Device("feather").Doing("delay").Weighing(500)).Wanting("delay");

        Assert.Equal("feather", Assert.Single((await Ask.Best(draft)).Rig.Placements).Id.Value);
    }

    [Fact]
    public async Task A_clip_on_leaves_the_board_to_others_but_its_mass_counts()
    {
        var draft = A.Draft().With(A.Device("strobe").Doing("tuner").Weighing(1)).With(A.OffBoard("clip").Doing("tuner")).Wanting("tuner");

        var best = await Ask.Best(draft);

        Assert.Equal((0, new GearId("clip")), (best.Score.Devices, Assert.Single(best.Rig.OffBoard)));
    }
}
