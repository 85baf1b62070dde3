using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class OutletSharingRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("echo").Drawing(20).AtVolts(9, 12), A.Device("hall").Drawing(20).AtVolts(9, 12))
        .With(A.Device("old").Drawing(20, type: CurrentType.Ac), A.Device("older").Drawing(20, type: CurrentType.Ac))
        .FedBy(A.Outlet("1").AtVolts(9, 12), A.Outlet("2").AtVolts(9, 12), A.Outlet("A").Alternating())
        .Problem();

    [Fact]
    public void Passes_for_two_devices_at_one_setting() => Judge.Passes(RuleIds.OutletSharing, Problem, A.Rig().Feeding("echo", "1").Feeding("hall", "1"));

    [Fact]
    public void Fails_for_two_settings_of_one_outlet() =>
        Judge.Fails(RuleIds.OutletSharing, Problem, A.Rig().Feeding("echo", "1").Feeding("hall", "1", 12), "echo hall", "", "echo and hall share outlet 1 but ask for different settings of it.");

    [Fact]
    public void Fails_for_a_split_ac_outlet() =>
        Judge.Fails(RuleIds.OutletSharing, Problem, A.Rig().Feeding("old", "A").Feeding("older", "A"), "old older", "", "old and older share outlet A; an AC outlet is never split.");

    [Fact]
    public void One_device_may_have_an_ac_outlet() => Judge.Passes(RuleIds.OutletSharing, Problem, A.Rig().Feeding("old", "A"));

    [Fact]
    public void Fails_where_a_joined_outlet_feeds_another_device() =>
        Judge.Fails(RuleIds.OutletSharing, Problem, A.Rig().FeedingParallel("echo", 9, "1", "2").Feeding("hall", "2"), "echo hall", "", "echo and hall share outlet 2; an outlet joined with another feeds one device only.");
}
