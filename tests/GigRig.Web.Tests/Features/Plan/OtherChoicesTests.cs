using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Plan;
using Xunit;

namespace GigRig.Web.Tests.Features.Plan;

public sealed class OtherChoicesTests
{
    private static readonly PlanOutcome Impossible = new PlanOutcome.Impossible([new("musts-covered", [], "Tuner is a must.")], [], TimeSpan.Zero);

    private static readonly PlanOffer Offer = new(
        [], [Stored(A.Board() with { Name = "Plank" })], [Stored(Supply("Brick")), Stored(Supply("Wall wart"))], [Stored(A.Amp() with { Name = "Combo" })], [], [], [], [], PowerAdapters.None, []);

    [Fact]
    public void Where_no_rig_can_be_every_other_owned_supply_amp_and_board_can_be_asked_for()
    {
        Assert.Equal(["Wall wart as the supply"], Words(new()));
        Assert.Equal(["Brick as the supply", "Combo as the amp"], Words(new(Supply: Offer.Supplies[1].Id.ToString(), Amp: PlanSelection.None)));
    }

    [Fact]
    public void A_choice_changes_what_it_says_and_nothing_else()
    {
        var picked = new PlanSelection(Supply: Offer.Supplies[1].Id.ToString(), Plugs: "slim");

        Assert.Equal(picked with { Supply = Offer.Supplies[0].Id.ToString() }, Assert.Single(OtherChoices.Of(Offer, picked, Impossible)).Selection);
    }

    [Fact]
    public void Slim_plugs_can_be_asked_for_where_room_was_kept_for_wider_ones()
    {
        var angled = Offer with { Leads = [A.Lead()] };

        Assert.Equal("Slim patch plugs", OtherChoices.Of(angled, new(), Impossible).Last().Words);
        Assert.DoesNotContain(OtherChoices.Of(angled, new(Plugs: "slim"), Impossible), choice => choice.Words.Contains("plugs", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("tuner", 0)]
    [InlineData("delay", 1)]
    public void A_rig_that_leaves_nothing_uncovered_needs_no_other_choice(string wanted, int choices)
    {
        var night = A.Event() with { Needs = [new(new(wanted), NeedLevel.Want, 10)] };
        var problem = (A.Draft().With(A.Device("tuner").Doing("tuner")) with { Event = night }).Problem();
        var rig = A.Rig().Placing("tuner", 0, 0);
        var best = new Proposal(rig, default, Domain.Wishes.Coverage.Of(problem, rig));

        Assert.Equal(choices, OtherChoices.Of(Offer, new(), new PlanOutcome.Proposed(best, true, 0, [], [], TimeSpan.Zero)).Count());
    }

    private static IEnumerable<string> Words(PlanSelection picked) => OtherChoices.Of(Offer, picked, Impossible).Select(choice => choice.Words);

    private static Supply Supply(string name) => A.Draft().FedBy(A.Outlet("1")).Supply! with { Name = name };

    private static Stored<T> Stored<T>(T thing) => new(Guid.NewGuid(), 1, thing);
}
