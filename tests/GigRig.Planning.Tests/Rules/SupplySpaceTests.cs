using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Rules;

public sealed class SupplySpaceTests
{
    [Fact]
    public async Task A_supply_on_top_stands_beside_the_device()
    {
        var best = await Ask.Best(Board(200).FedBy(A.Supply().Mounted(SupplyMount.Top, 100, 100, 30)));

        Assert.NotNull(best.Rig.Supply);
        Assert.False(Body(best.Rig.Supply).Overlaps(Body(best.Rig.Placements[0])));
    }

    [Fact]
    public async Task One_millimetre_less_and_the_supply_on_top_leaves_no_room() =>
        await Ask.Impossible(Board(199).FedBy(A.Supply().Mounted(SupplyMount.Top, 100, 100, 30)));

    [Fact]
    public async Task A_supply_on_top_turns_where_it_must()
    {
        var best = await Ask.Best(Board(180).FedBy(A.Supply().Mounted(SupplyMount.Top, 100, 80, 30)));

        Assert.Equal(Turn.Quarter, best.Rig.Supply?.Turn);
    }

    [Fact]
    public async Task A_supply_on_top_that_is_higher_than_the_lid_is_refused_by_name()
    {
        var lidded = A.Board(200, 100).Clearing(over: 60);

        var impossible = await Ask.Impossible(A.Draft(lidded).Wanting("delay").FedBy(A.Supply().Mounted(SupplyMount.Top, 100, 100, 61)));

        Assert.Equal((RuleIds.Lid, "supply is 61 mm high; the lid leaves 60 mm."), (impossible.Conflict[0].RuleId, impossible.Conflict[0].Sentence));
        await Ask.Best(A.Draft(lidded).Wanting("delay").FedBy(A.Supply().Mounted(SupplyMount.Top, 100, 100, 60)));
    }

    [Fact]
    public async Task A_supply_on_top_that_is_wider_than_the_board_is_refused() =>
        await Ask.Impossible(A.Draft(A.Board(200, 100)).Wanting("delay").FedBy(A.Supply().Mounted(SupplyMount.Top, 201, 101, 30)));

    [Theory]
    [InlineData(200, 100, 50)]
    [InlineData(100, 200, 50)]
    public async Task A_supply_that_just_fits_below_is_no_hindrance(int width, int depth, int height) =>
        await Ask.Best(Board(200).FedBy(A.Supply().Mounted(SupplyMount.Under, width, depth, height)));

    [Theory]
    [InlineData(201, 100, 50)]
    [InlineData(200, 101, 50)]
    [InlineData(200, 100, 51)]
    public async Task A_supply_one_millimetre_too_large_for_below_is_refused(int width, int depth, int height)
    {
        var impossible = await Ask.Impossible(Board(200).FedBy(A.Supply().Mounted(SupplyMount.Under, width, depth, height)));

        Assert.Equal(RuleIds.SupplySpace, Assert.Single(impossible.Conflict).RuleId);
    }

    /// <summary>100 mm deep, 50 mm free below, with a 100 × 100 delay that must come along.</summary>
    private static RigProblemDraft Board(int width) =>
        A.Draft(A.Board(width, 100).Clearing(under: 50)).With(A.Device("echo").Doing("delay")).Needing("delay");

    /// <summary>Of what is 100 × 100 whichever way it is turned.</summary>
    private static Rect Body(Placement placement) => new(placement.At.X, placement.At.Y, 100.Mm, 100.Mm);
}
