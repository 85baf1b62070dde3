using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class OutletCurrentRuleTests
{
    [Theory]
    [InlineData(100, true)]
    [InlineData(101, false)]
    public void A_device_alone_may_draw_all_there_is(int draw, bool passes)
    {
        var problem = A.Draft().With(A.Device("echo").Drawing(draw)).FedBy(A.Outlet("1")).Problem();
        var rig = A.Rig().Placing("echo", 0, 0).Feeding("echo", "1");
        if (passes)
            Judge.Passes(RuleIds.OutletCurrent, problem, rig);
        else
            Judge.Fails(RuleIds.OutletCurrent, problem, rig, "echo", "1 mA", "echo draws 101 mA; outlet 1 gives 100 mA.");
    }

    [Fact]
    public void Draws_on_one_outlet_add_up()
    {
        Judge.Passes(RuleIds.OutletCurrent, Shared(60, 40), A.Rig().Feeding("echo", "1").Feeding("hall", "1"));
        Judge.Fails(RuleIds.OutletCurrent, Shared(60, 65), A.Rig().Feeding("echo", "1").Feeding("hall", "1"), "echo hall", "25 mA", "echo and hall draw 125 mA; outlet 1 gives 100 mA.");
    }

    [Fact]
    public void Headroom_is_added_to_each_draw_and_rounded_up()
    {
        // 33 mA and a tenth are 36.3, so 37 mA each; three of them 111.
        var problem = A.Draft()
            .With(A.Device("a").Drawing(33), A.Device("b").Drawing(33), A.Device("c").Drawing(33))
            .FedBy(A.Outlet("1").Giving(110)).WithHeadroom(0.1m).OwningAdapters(splitter: 2).Problem();
        Judge.Fails(RuleIds.OutletCurrent, problem, A.Rig().Feeding("a", "1").Feeding("b", "1").Feeding("c", "1"), "a b c", "1 mA", "a, b and c draw 111 mA; outlet 1 gives 110 mA.");
    }

    [Theory]
    [InlineData(350, true)]
    [InlineData(351, false)]
    public void In_parallel_the_currents_add_up(int draw, bool passes)
    {
        var rig = A.Rig().FeedingParallel("echo", 9, "1", "2");
        if (passes)
            Judge.Passes(RuleIds.OutletCurrent, Joined(draw), rig);
        else
            Judge.Fails(RuleIds.OutletCurrent, Joined(draw), rig, "echo", "1 mA", "echo draws 351 mA; outlets 1 and 2 together give 350 mA.");
    }

    [Theory]
    [InlineData(100, true)]
    [InlineData(101, false)]
    public void In_series_the_lesser_current_counts(int draw, bool passes)
    {
        var rig = A.Rig().FeedingSeries("echo", 9, "1", "2");
        if (passes)
            Judge.Passes(RuleIds.OutletCurrent, Joined(draw), rig);
        else
            Judge.Fails(RuleIds.OutletCurrent, Joined(draw), rig, "echo", "1 mA", "echo draws 101 mA; outlets 1 and 2 together give 100 mA.");
    }

    private static RigProblem Shared(int first, int second) =>
        A.Draft().With(A.Device("echo").Drawing(first), A.Device("hall").Drawing(second)).FedBy(A.Outlet("1")).Problem();

    private static RigProblem Joined(int draw) =>
        A.Draft().With(A.Device("echo").Drawing(draw).AtVolts(9, 18)).FedBy(A.Outlet("1"), A.Outlet("2").Giving(250)).Problem();
}
