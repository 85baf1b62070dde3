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
}
