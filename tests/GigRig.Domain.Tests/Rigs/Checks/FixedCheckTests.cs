using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rigs.Checks;

public sealed class FixedCheckTests
{
    [Fact]
    public void In_each_corner_of_the_board_is_fine()
    {
        Complain.Nothing(Complain.Fine.Fixing("echo", 0, 0));
        Complain.Nothing(Complain.Fine.Fixing("echo", 500, 200));
    }

    [Theory]
    [InlineData("ghost")]
    [InlineData("clip")]
    [InlineData("amp")]
    [InlineData("supply")]
    public void What_cannot_stand_on_the_board_cannot_be_fixed(string id) => Complain.About(
        Complain.Fine.Fixing(id, 0, 0),
        "/options/fixed/0/id", id, "the id of a device or of a supply on top", $"\"{id}\" is fixed but is no device and no supply on top; correct the id or drop it.");

    [Fact]
    public void A_supply_on_top_can_be_fixed() =>
        Complain.Nothing(Complain.Fine.FedBy(A.Supply(A.Outlet("1")).Mounted(SupplyMount.Top, 100, 50, 30)).Fixing("supply", 500, 250));

    [Fact]
    public void Fixed_twice_is_refused() => Complain.About(
        Complain.Fine.Fixing("echo", 0, 0).Fixing("echo", 0, 0),
        "/options/fixed/1/id", "echo", "once", "echo is fixed twice; keep one.");

    [Fact]
    public void Fixed_and_banned_at_once_is_refused() => Complain.About(
        Complain.Fine.Fixing("echo", 0, 0).Banning("echo"),
        "/options/fixed/0/id", "echo", "not banned as well", "echo is both fixed and banned; drop one of them.");

    [Fact]
    public void A_turn_that_is_not_allowed_is_refused() => Complain.About(
        Complain.Fine.Fixing("echo", 0, 0, Turn.Half),
        "/options/fixed/0/turn", "180", "one of 0", "echo is fixed at a turn of 180°; it may stand at 0° only.");

    [Fact]
    public void Off_the_board_is_refused()
    {
        Complain.About(
            Complain.Fine.Fixing("echo", 501, 0),
            "/options/fixed/0/x", "501", "0 to 500 mm", "echo is fixed 501 mm from the left and is 100 mm wide; the board is 600 mm wide. Fix it where it stands on the board.");
        Complain.About(
            Complain.Fine.Fixing("echo", 0, -1),
            "/options/fixed/0/y", "-1", "0 to 200 mm", "echo is fixed -1 mm from the front and is 100 mm deep; the board is 300 mm deep. Fix it where it stands on the board.");
    }

    /// <summary>That is a question with an answer.</summary>
    [Fact]
    public void Two_fixed_on_top_of_each_other_are_no_matter_of_sense() =>
        Complain.Nothing(Complain.Fine.With(A.Device("hall")).Fixing("echo", 0, 0).Fixing("hall", 50, 0));
}
