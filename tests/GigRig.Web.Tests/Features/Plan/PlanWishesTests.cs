using GigRig.Domain.Gear;
using GigRig.Web.Features.Plan;
using Xunit;

namespace GigRig.Web.Tests.Features.Plan;

public sealed class PlanWishesTests
{
    private static readonly GearId Echo = new("echo");

    [Fact]
    public void A_pin_lifts_a_ban_and_a_ban_lifts_a_pin()
    {
        var banned = PlanWishes.None.TogglePin(Echo).ToggleBan(Echo);
        var pinned = banned.TogglePin(Echo);

        Assert.True(banned.Bans(Echo) && !banned.Pins(Echo));
        Assert.True(pinned.Pins(Echo) && !pinned.Bans(Echo));
    }

    [Fact]
    public void The_same_press_again_takes_it_back() => Assert.Equal(PlanWishes.None, PlanWishes.None.TogglePin(Echo).TogglePin(Echo));

    [Fact]
    public void An_address_is_read_with_bans_before_pins_and_a_number_within_its_limits()
    {
        Assert.Equal(new([new("echo")], [new("fuzz")], 3), PlanWishes.Read(["echo", "fuzz", "echo", ""], ["fuzz"], 3));
        Assert.Equal(PlanWishes.None, PlanWishes.Read(null, null, null));
        Assert.Equal((0, 20), (PlanWishes.Read(null, null, -7).Alternatives, PlanWishes.Read(null, null, 4000).Alternatives));
    }

    [Fact]
    public void What_is_not_on_offer_any_more_is_not_wished() =>
        Assert.Equal(new([new("echo")], [], 2), new PlanWishes([new("echo"), new("sold")], [new("gone")], 2).Among(new HashSet<GigRig.Domain.Gear.GearId> { new("echo") }));
}
