using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Workbench;
using Xunit;
using static GigRig.Web.Tests.Features.Workbench.Benches;

namespace GigRig.Web.Tests.Features.Workbench;

public sealed class ChainOrdersTests
{
    [Fact]
    public void A_newcomer_goes_behind_its_usual_neighbour()
    {
        var rig = A.Rig().Placing("tuner", 0, 0).Placing("hall", 100, 0).Placing("echo", 200, 0).Chained("tuner hall");

        Assert.Equal([Tuner, Echo, Hall], ChainOrders.With(Draft.Problem(), rig, Echo).Front);
    }

    [Fact]
    public void The_musicians_own_order_of_the_others_stays()
    {
        var rig = A.Rig().Placing("echo", 0, 0).Placing("tuner", 100, 0).Placing("fuzz", 200, 0).Chained("echo tuner");

        Assert.Equal([Echo, Tuner, Fuzz], ChainOrders.With(Draft.Problem(), rig, Fuzz).Front);
    }

    [Fact]
    public void With_nothing_before_it_a_newcomer_comes_first()
    {
        var rig = A.Rig().Placing("echo", 0, 0).Placing("tuner", 100, 0).Chained("echo");

        Assert.Equal([Tuner, Echo], ChainOrders.With(Draft.Problem(), rig, Tuner).Front);
    }

    [Fact]
    public void A_time_effect_joins_the_loop_where_the_event_puts_it_there()
    {
        var problem = (Draft with { Amp = A.Amp().Looped() }).Problem().Draft;
        var looped = (problem with { Event = problem.Event with { Chain = GigRig.Domain.Events.ChainPolicy.TimeInLoop } }).Problem();
        var rig = A.Rig().Placing("tuner", 0, 0).Placing("echo", 100, 0).Chained("tuner");

        Assert.Equal(new Chain([Tuner], [Echo]), ChainOrders.With(looped, rig, Echo));
    }
}
