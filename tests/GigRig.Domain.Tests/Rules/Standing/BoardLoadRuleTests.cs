using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class BoardLoadRuleTests
{
    private static readonly Rig Both = A.Rig().Placing("echo", 0, 0).Placing("hall", 200, 0);

    [Theory]
    [InlineData(SupplyMount.Off, 700)]
    [InlineData(SupplyMount.Under, 1700)]
    [InlineData(SupplyMount.Top, 1700)]
    public void Devices_and_a_supply_on_or_under_the_board_count_up_to_the_limit(SupplyMount mount, int load)
    {
        Judge.Passes(RuleIds.BoardLoad, Bearing(load, mount), Both);
        Judge.Fails(RuleIds.BoardLoad, Bearing(load - 1, mount), Both, "board", "1 g", $"The board carries {load} g; it is made for {load - 1} g.");
    }

    [Fact]
    public void What_stays_at_home_does_not_count() => Judge.Passes(RuleIds.BoardLoad, Bearing(400, SupplyMount.Off), A.Rig().Placing("echo", 0, 0));

    private static RigProblem Bearing(int grams, SupplyMount mount) => A.Draft(A.Board().Bearing(grams))
        .With(A.Device("echo").Weighing(400), A.Device("hall").Weighing(300))
        .FedBy(A.Supply().Mounted(mount, 200, 80, 30).Weighing(1000))
        .Problem();
}
