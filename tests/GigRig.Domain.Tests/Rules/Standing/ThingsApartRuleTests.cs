using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class ThingsApartRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo").Sized(70, 120).WithJack(JackUse.Out, Side.Right, 60))
        .With(A.Device("hall").Sized(70, 120).WithJack(JackUse.In, Side.Left, 60))
        .With(A.Device("bare").Sized(70, 120))
        .FedBy(A.Supply().Mounted(SupplyMount.Top, 200, 80, 30))
        .Problem();

    [Fact]
    public void Passes_where_bodies_touch() =>
        Judge.Passes(RuleIds.ThingsApart, Problem, A.Rig().Placing("hall", 100, 0).Placing("bare", 170, 0));

    [Fact]
    public void Fails_for_bodies_that_overlap_by_a_millimetre() =>
        Judge.Fails(RuleIds.ThingsApart, Problem, A.Rig().Placing("hall", 100, 0).Placing("bare", 169, 0), "hall bare", "1 mm", "The body of hall and the body of bare overlap by 1 mm; move one of them.");

    [Fact]
    public void A_plug_may_touch_a_body_but_not_reach_into_it()
    {
        Judge.Passes(RuleIds.ThingsApart, Problem, A.Rig().Placing("echo", 0, 0).Placing("bare", 85, 0));
        Judge.Fails(RuleIds.ThingsApart, Problem, A.Rig().Placing("echo", 0, 0).Placing("bare", 80, 0), "echo bare", "5 mm", "A plug of echo and the body of bare overlap by 5 mm; move one of them.");
    }

    [Fact]
    public void Facing_plugs_each_need_their_room()
    {
        Judge.Passes(RuleIds.ThingsApart, Problem, A.Rig().Placing("echo", 0, 0).Placing("hall", 100, 0));
        Judge.Fails(RuleIds.ThingsApart, Problem, A.Rig().Placing("echo", 0, 0).Placing("hall", 99, 0), "echo hall", "1 mm", "A plug of echo and a plug of hall overlap by 1 mm; move one of them.");
    }

    [Fact]
    public void Plugs_may_pass_each_other_side_by_side() =>
        Judge.Passes(RuleIds.ThingsApart, Problem, A.Rig().Placing("echo", 0, 0).Placing("hall", 85, 16));

    [Fact]
    public void A_things_own_plugs_are_not_compared()
    {
        var crowded = A.Draft().With(A.Device("box").WithJack(JackUse.In, Side.Rear, 40).WithJack(JackUse.Out, Side.Rear, 45)).Problem();
        Judge.Passes(RuleIds.ThingsApart, crowded, A.Rig().Placing("box", 0, 0));
    }

    [Fact]
    public void A_supply_on_top_takes_its_room() =>
        Judge.Fails(RuleIds.ThingsApart, Problem, A.Rig().Placing("bare", 0, 0).PlacingSupply(60, 0), "bare supply", "10 mm", "The body of bare and the body of supply overlap by 10 mm; move one of them.");
}
