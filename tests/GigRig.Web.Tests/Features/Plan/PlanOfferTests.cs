using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Plan;
using Xunit;

namespace GigRig.Web.Tests.Features.Plan;

public sealed class PlanOfferTests
{
    private static readonly Lead Straight = A.Lead("straight") with { FirstPlug = PlugShape.Slim, SecondPlug = PlugShape.Straight };
    private static readonly Lead Angled = A.Lead("angled") with { FirstPlug = PlugShape.Angled, SecondPlug = PlugShape.Angled };
    private static readonly Lead SlimStage = A.Lead("stage") with { Kind = LeadKind.Instrument, FirstPlug = PlugShape.Slim, SecondPlug = PlugShape.Slim };

    [Fact]
    public void Room_is_kept_for_the_slimmest_patch_plugs_that_are_owned()
    {
        Assert.Equal(PlugSizes.Usual, Plugs([], new()));
        Assert.Equal(PlugSizes.For(PlugShape.Straight), Plugs([Straight, SlimStage], new()));
        Assert.Equal(PlugSizes.For(PlugShape.Angled), Plugs([Straight, Angled, SlimStage], new()));
    }

    [Fact]
    public void Room_is_kept_for_the_plugs_that_are_picked_whatever_is_owned()
    {
        Assert.Equal(PlugSizes.Usual, Plugs([Angled], new(Plugs: "slim")));
        Assert.Equal(PlugSizes.For(PlugShape.Straight), Plugs([Angled], new(Plugs: "straight")));
    }

    [Theory]
    [InlineData("round")]
    [InlineData("7")]
    [InlineData("")]
    public void An_address_that_names_no_plugs_leaves_it_to_what_is_owned(string said) =>
        Assert.Equal(PlugSizes.For(PlugShape.Angled), Plugs([Angled], new(Plugs: said)));

    private static PlugSizes Plugs(ValueList<Lead> leads, PlanSelection picked) =>
        new PlanOffer([Stored(A.Event())], [Stored(A.Board())], [], [], [], [], leads, [], PowerAdapters.None, []).Draft(picked, PlanOptions.Default).Options.Plugs;

    private static Stored<T> Stored<T>(T thing) => new(Guid.NewGuid(), 1, thing);
}
