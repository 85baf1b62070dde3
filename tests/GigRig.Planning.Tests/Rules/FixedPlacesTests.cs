using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests.Rules;

public sealed class FixedPlacesTests
{
    private static readonly RigProblemDraft Three = A.Draft(A.Board(300, 100))
        .With(A.Device("echo").Doing("delay"), A.Device("hall").Doing("reverb"), A.Device("fuzz").Doing("drive"))
        .Wanting("delay").Wanting("reverb").Wanting("drive");

    [Fact]
    public async Task The_rest_is_fitted_around_what_is_fixed()
    {
        var best = await Ask.Best(Three.Fixing("hall", 200, 0));

        Assert.Equal(new Placement(new("hall"), new(200.Mm, 0.Mm)), best.Rig.Placements.Single(p => p.Id.Value == "hall"));
        Assert.Equal(3, best.Rig.Placements.Count);
    }

    /// <summary>From one millimetre off the side on, a gap is lost that a box would need.</summary>
    [Fact]
    public async Task One_millimetre_in_the_way_costs_a_box()
    {
        Assert.Equal(3, (await Ask.Best(Three.Fixing("hall", 100, 0))).Score.Devices);
        Assert.Equal(2, (await Ask.Best(Three.Fixing("hall", 99, 0))).Score.Devices);
    }

    [Fact]
    public async Task What_is_fixed_comes_along_though_nobody_wants_it()
    {
        var best = await Ask.Best(Three.With(A.Device("brick")).Fixing("brick", 150, 0));

        Assert.Contains(new GearId("brick"), best.Rig.Placements.Select(p => p.Id));
        Assert.Equal(2, best.Score.Devices);
    }

    [Fact]
    public async Task A_supply_on_top_may_be_fixed()
    {
        var fed = Three.FedBy(A.Supply().Mounted(SupplyMount.Top, 100, 50, 30)).Fixing("supply", 250, 0, Turn.Quarter);

        var best = await Ask.Best(fed);

        Assert.Equal(new Placement(new("supply"), new(250.Mm, 0.Mm), Turn.Quarter), best.Rig.Supply);
        Assert.Equal(2, best.Score.Devices);
    }

    [Fact]
    public async Task Two_fixed_on_top_of_each_other_are_named_and_either_may_be_let_go()
    {
        var impossible = await Ask.Impossible(Three.Fixing("echo", 0, 0).Fixing("hall", 97, 0));

        Assert.Equal(
            ["The body of echo and the body of hall overlap by 3 mm; move one of them.", "echo is fixed at 0, 0 mm.", "hall is fixed at 97, 0 mm."],
            impossible.Conflict.Select(part => part.Sentence));
        Assert.Equal([RuleIds.ThingsApart, RuleIds.FixedPlaces, RuleIds.FixedPlaces], impossible.Conflict.Select(part => part.RuleId));
        Assert.Contains("Let echo stand elsewhere. Then one want stays uncovered.", impossible.Repairs.Select(r => r.Sentence));
        Assert.Contains("Let hall stand elsewhere. Then everything is covered.", impossible.Repairs.Select(r => r.Sentence));
    }

    [Fact]
    public async Task Fixed_where_a_must_is_kept_off_the_board_is_part_of_the_reason()
    {
        var impossible = await Ask.Impossible((Three with { Event = A.Event() }).Needing("delay", "reverb", "drive").Fixing("hall", 50, 0));

        Assert.Contains("hall is fixed at 50, 0 mm.", impossible.Conflict.Select(part => part.Sentence));
        Assert.Contains("Let hall stand elsewhere. Then everything is covered.", impossible.Repairs.Select(r => r.Sentence));
    }

    /// <summary>Fixing everything where it stands already changes no answer, and takes the choice away.</summary>
    [Fact]
    public Task A_rig_fixed_as_it_stands_is_the_answer_again() =>
        GenContest.Mixed.SampleAsync(async draft =>
        {
            if (await Ask.Quietly(draft) is not PlanOutcome.Proposed before)
                return;
            var places = before.Best.Rig.Supply is { } supply ? before.Best.Rig.Placements.Append(supply) : before.Best.Rig.Placements;

            var after = Assert.IsType<PlanOutcome.Proposed>(await Ask.Quietly(draft with { Options = draft.Options with { Fixed = [.. places] } }));

            Assert.Equal(before.Best.Rig.Placements.OrderBy(p => p.Id), after.Best.Rig.Placements.OrderBy(p => p.Id));
            Assert.Equal(0, after.Best.Score.CompareChoice(before.Best.Score));
        }, iter: 60);
}
