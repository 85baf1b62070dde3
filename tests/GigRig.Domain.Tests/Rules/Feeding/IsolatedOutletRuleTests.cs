using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class IsolatedOutletRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("fuzz").Drawing(5, Polarity.Positive), A.Device("echo").Drawing(60), A.Device("other").Drawing(5, Polarity.Positive))
        .FedBy(A.Outlet("own"), A.Outlet("s1").Sharing("s"), A.Outlet("s2").Sharing("s"), A.Outlet("lone").Sharing("l"), A.Outlet("plus").Positive())
        .OwningAdapters(reverse: 2, splitter: 2)
        .Problem();

    [Theory]
    [InlineData("own")]
    [InlineData("lone")]
    public void Passes_on_an_isolated_outlet_or_one_alone_in_its_group(string outlet) =>
        Judge.Passes(RuleIds.IsolatedOutlet, Problem, A.Rig().Feeding("fuzz", outlet, reversed: true));

    [Fact]
    public void Fails_on_a_shared_return() =>
        Judge.Fails(RuleIds.IsolatedOutlet, Problem, A.Rig().Feeding("fuzz", "s1", reversed: true), "fuzz", "", "fuzz is on a reversing lead; outlet s1 shares its return with others, and that would short the supply.");

    [Fact]
    public void Fails_beside_another_device_on_the_same_outlet() =>
        Judge.Fails(RuleIds.IsolatedOutlet, Problem, A.Rig().Feeding("fuzz", "own", reversed: true).Feeding("echo", "own"), "fuzz", "", "fuzz is on a reversing lead; it shares outlet own with echo, and that would short the supply.");

    [Fact]
    public void Two_positive_devices_do_not_share_a_positive_outlet_either() =>
        Assert.Equal(2, Judge.Ask(RuleIds.IsolatedOutlet, Problem, A.Rig().Feeding("fuzz", "plus").Feeding("other", "plus")).Count);

    [Fact]
    public void A_usual_device_may_share_a_return() =>
        Judge.Passes(RuleIds.IsolatedOutlet, Problem, A.Rig().Feeding("echo", "s1"));

    [Fact]
    public void Fails_for_a_usual_device_reversed_on_a_shared_return()
    {
        var problem = A.Draft().With(A.Device("echo").Drawing(60)).FedBy(A.Outlet("1").Positive().Sharing("s"), A.Outlet("2").Sharing("s")).OwningAdapters(reverse: 1).Problem();
        Judge.Fails(RuleIds.IsolatedOutlet, problem, A.Rig().Feeding("echo", "1", reversed: true));
    }
}
