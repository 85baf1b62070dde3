using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Workbench;
using Xunit;
using static GigRig.Web.Tests.Features.Workbench.Benches;

namespace GigRig.Web.Tests.Features.Workbench;

public sealed class HookUpsTests
{
    private static readonly Rig Three = Laid.Placing("hall", 300, 0);

    [Fact]
    public void A_newcomer_gets_a_free_outlet_and_the_others_keep_theirs()
    {
        var mended = new HookUps(Draft.Problem(), Unsolved).Mended(Three);

        Assert.Equal(Three.Feeding("hall", "3").HookUp, mended.HookUp);
    }

    [Fact]
    public void A_free_outlet_that_is_too_weak_is_passed_over()
    {
        var problem = Draft.FedBy(A.Outlet("1"), A.Outlet("2"), A.Outlet("3").Giving(59), A.Outlet("4")).Problem();

        Assert.Equal(Three.Feeding("hall", "4").HookUp, new HookUps(problem, Unsolved).Mended(Three).HookUp);
    }

    [Fact]
    public void A_reversing_lead_is_used_where_one_is_owned()
    {
        var draft = Draft.FedBy(A.Outlet("1"), A.Outlet("2"), A.Outlet("3").Positive());

        Assert.Equal(Three.Feeding("hall", "3", reversed: true).HookUp, new HookUps(draft.OwningAdapters(reverse: 1).Problem(), Unsolved).Mended(Three).HookUp);
        Assert.Equal(Three.HookUp, new HookUps(draft.Problem(), Unsolved).Mended(Three).HookUp);
    }

    [Fact]
    public void Where_no_outlet_is_free_everything_is_hooked_up_anew()
    {
        ValueList<Feed> anew = [Feed.FromBattery(Tuner)];

        var mended = new HookUps(Draft.FedBy(A.Outlet("1"), A.Outlet("2")).Problem(), (_, devices, before) => devices == [Tuner, Echo, Hall] && before == Three.HookUp ? anew : null).Mended(Three);

        Assert.Equal(anew, mended.HookUp);
    }

    [Fact]
    public void A_rig_that_is_fed_is_left_as_it_is() =>
        Assert.Equal(Laid, new HookUps(Draft.Problem(), (_, _, _) => throw new InvalidOperationException("asked for no reason")).Mended(Laid));
}
