using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

// Counts of long leads: common practice, no source.
public sealed class PackSheetTests
{
    [Fact]
    public void Everything_that_is_carried_is_on_the_list_with_its_mass()
    {
        var problem = A.Draft().With(A.Device("tuner"), A.Device("at home")).With(A.OffBoard("clip")).FedBy(A.Outlet("1")).Through(A.Amp()).Problem();

        var sheet = PackSheet.Of(problem, A.Rig().Placing("tuner", 0, 0).Bringing("clip"));

        Assert.Equal(["board", "supply", "amp", "tuner", "clip"], sheet.Gear.Select(line => line.Name));
        Assert.Equal((2000 + 1000 + 15_000 + 500 + 50).G, sheet.Mass);
    }

    [Fact]
    public void A_chain_in_front_takes_two_long_leads_and_one_patch_lead_less_than_boxes()
    {
        var problem = A.Draft().With(A.Device("a"), A.Device("b"), A.Device("c")).Problem();

        var leads = PackSheet.Of(problem, A.Rig().Placing("a", 0, 0).Placing("b", 100, 0).Placing("c", 200, 0)).Leads;

        Assert.Equal([new PackLine(2, "instrument lead"), new PackLine(2, "patch lead")], leads);
    }

    [Fact]
    public void A_loop_takes_two_leads_more()
    {
        var problem = A.Draft().With(A.Device("a"), A.Device("b")).Through(A.Amp().Looped()).Problem();

        var leads = PackSheet.Of(problem, A.Rig().Placing("a", 0, 0).Placing("b", 100, 0).Chained("a", "b")).Leads;

        Assert.Contains(new PackLine(2, "loop lead (amp send and return)"), leads);
        Assert.DoesNotContain(leads, line => line.Name == "patch lead");
    }

    [Fact]
    public void Power_adapters_and_batteries_are_counted_from_the_hook_up()
    {
        var problem = A.Draft()
            .With(A.Device("a").Drawing(10), A.Device("b").Drawing(10), A.Device("c").Drawing(250), A.Device("d").Drawing(5).OnBatteryToo(), A.Device("e").Drawing(5, Polarity.Positive))
            .FedBy(A.Outlet("1"), A.Outlet("2"), A.Outlet("3"), A.Outlet("4"), A.Outlet("5"))
            .Problem();
        var rig = A.Rig().Feeding("a", "1").Feeding("b", "1").FeedingParallel("c", 9, "2", "3", "4").OnBattery("d").Feeding("e", "5", reversed: true);

        var leads = PackSheet.Of(problem, rig).Leads.ToDictionary(line => line.Name, line => line.Count);

        Assert.Equal((4, 1, 2, 1, 1), (leads["power lead"], leads["power splitter"], leads["parallel power lead"], leads["polarity-reversing power lead"], leads["fresh battery"]));
        Assert.DoesNotContain("series power lead", leads);
    }
}
