using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Wiring;

public sealed class LeadPlanTests
{
    private static readonly WiringAllowances Bare = new(0.Mm, 0.Mm, 25.Mm, 3000.Mm, 2000.Mm);

    [Fact]
    public void A_patch_lead_needs_its_way_a_bend_at_each_end_and_slack()
    {
        var draft = Row(Patch("any", 900)) with { Options = PlanOptions.Default with { Wiring = Bare with { Bend = 10.Mm, Slack = 5.Mm } } };

        // From the tip of the plug at x = 185 to the one at x = 115, on one line.
        Assert.Equal(70 + 20 + 5, Of(draft).Hops[1].Needed.Value);
    }

    [Fact]
    public void Long_leads_need_what_the_stage_asks_for() =>
        Assert.Equal([3000, 70, 2000], Of(Row()).Hops.Select(hop => hop.Needed.Value));

    [Fact]
    public void The_shortest_that_reaches_is_taken() =>
        Assert.Equal("just", Of(Row(Patch("long", 900), Patch("just", 70), Patch("short", 69))).Hops[1].Lead?.Id.Value);

    [Fact]
    public void As_many_hops_as_can_be_are_served_before_cable_is_spared()
    {
        var leads = Of(Row(Patch("only", 3000) with { Kind = LeadKind.Instrument }, Patch("other", 2000) with { Kind = LeadKind.Instrument }));

        Assert.Equal(["only", null, "other"], leads.Hops.Select(hop => hop.Lead?.Id.Value));
    }

    [Fact]
    public void A_kind_of_its_own_serves_each_hop()
    {
        var plan = Of(Row(Patch("loop", 9000) with { Kind = LeadKind.Loop }, Patch("power", 9000) with { Kind = LeadKind.Power }, Patch("patch", 9000)));

        Assert.Equal([null, "patch", "loop"], plan.Hops.Select(hop => hop.Lead?.Id.Value));
    }

    [Fact]
    public void A_lead_is_used_no_more_often_than_it_is_owned()
    {
        var draft = A.Draft(A.Board(900)).With(Box("a"), Box("b"), Box("c"), Box("d")) with { Leads = [Patch("two", 300) with { Count = 2 }] };
        var rig = A.Rig().Placing("a", 600, 0).Placing("b", 400, 0).Placing("c", 200, 0).Placing("d", 0, 0);

        var plan = LeadPlan.Of(draft.Problem(), rig);

        Assert.Equal(2, Assert.Single(plan.Used).Count);
        Assert.Equal(3, plan.Missing.Count());
    }

    [Fact]
    public void A_straight_plug_that_has_no_room_serves_only_the_other_way_round()
    {
        // The output of the first faces the second at 30 mm: room for the two slim plugs that were reserved, not for a straight one. Its input faces nothing.
        var draft = A.Draft(A.Board(900)).With(Box("a"), Box("b")) with { Leads = [Patch("straight", 900, PlugShape.Straight), Patch("mixed", 900, PlugShape.Straight, PlugShape.Slim)] };
        var near = A.Rig().Placing("a", 330, 0).Placing("b", 200, 0);

        Assert.Null(LeadPlan.Of(draft.Problem(), near).Hops[1].Lead);
        Assert.Equal("straight", LeadPlan.Of(draft.Problem(), near).Hops[1].WithoutRoom?.Id.Value);
        Assert.Equal("straight", LeadPlan.Of(draft.Problem(), A.Rig().Placing("a", 400, 0).Placing("b", 200, 0)).Hops[1].Lead?.Id.Value);
    }

    [Fact]
    public void A_patch_lead_does_not_stick_out_farther_than_the_board_lets_it_but_a_long_one_may()
    {
        var board = A.Board(260, 300).Overhanging(0, 0, 20, 20);
        // Both outer plugs stand out 45 mm over an edge that lets 20 mm pass; the inner ones have room.
        Rig Facing() => A.Rig().Placing("a", 0, 0).Placing("b", 160, 0);
        var draft = A.Draft(board).With(Box("a"), Box("b")) with
        {
            Leads = [Patch("straight", 900, PlugShape.Straight), Patch("guitar", 3000, PlugShape.Straight) with { Kind = LeadKind.Instrument, Count = 2 }],
            Options = PlanOptions.Default with { Wiring = Bare },
        };

        // The patch lead runs from the left edge, where "a" has its output, to the right edge, where "b" has its input.
        Assert.Equal(["guitar", null, "guitar"], LeadPlan.Of(draft.Problem(), Facing()).Hops.Select(hop => hop.Lead?.Id.Value));
    }

    [Fact]
    public void What_is_missing_can_be_bought_at_the_next_length_or_must_be_made()
    {
        Assert.Equal(150.Mm, StandardLeads.For(HopKind.Patch, 101.Mm));
        Assert.Equal(900.Mm, StandardLeads.For(HopKind.Patch, 900.Mm));
        Assert.Null(StandardLeads.For(HopKind.Patch, 901.Mm));
        Assert.Equal(6000.Mm, StandardLeads.For(HopKind.Instrument, 4501.Mm));
    }

    [Fact]
    public void A_rig_is_wired_anew_when_a_device_is_moved_or_turned()
    {
        var problem = Row(Patch("short", 70), Patch("long", 400)).Problem();

        Assert.Equal("short", LeadPlan.Of(problem, Standing()).Hops[1].Lead?.Id.Value);
        Assert.Equal("long", LeadPlan.Of(problem, A.Rig().Placing("a", 400, 0).Placing("b", 0, 0)).Hops[1].Lead?.Id.Value);
        Assert.Equal("long", LeadPlan.Of(problem, A.Rig().Placing("a", 200, 0, Turn.Half).Placing("b", 0, 0)).Hops[1].Lead?.Id.Value);
    }

    private static LeadPlan Of(RigProblemDraft draft) => LeadPlan.Of(draft.Problem(), Standing());

    /// <summary>Two boxes side by side, 100 mm of board between them, in front of an amp.</summary>
    private static RigProblemDraft Row(params Lead[] leads) => A.Draft(A.Board(900)).Through(A.Amp()).With(Box("a"), Box("b")) with
    {
        Leads = [.. leads], Options = PlanOptions.Default with { Wiring = Bare },
    };

    private static Rig Standing() => A.Rig().Placing("a", 200, 0).Placing("b", 0, 0);

    private static Device Box(string id) => A.Device(id).WithAudioJacks();

    private static Lead Patch(string id, int length, PlugShape first = PlugShape.Slim, PlugShape? second = null) =>
        A.Lead(id) with { Length = length.Mm, FirstPlug = first, SecondPlug = second ?? first };
}
