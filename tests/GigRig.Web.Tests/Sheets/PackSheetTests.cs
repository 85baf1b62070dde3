using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

// Counts of spares: common practice, no source.
public sealed class PackSheetTests
{
    [Fact]
    public void Everything_that_is_carried_is_on_the_list_with_its_mass()
    {
        var problem = A.Draft().With(A.Device("tuner"), A.Device("at home")).With(A.OffBoard("clip")).FedBy(A.Outlet("1")).Through(A.Amp()) with { Instrument = A.Instrument("guitar") };

        var sheet = PackSheet.Of(LeadPlan.Of(problem.Problem(), A.Rig().Placing("tuner", 0, 0).Bringing("clip")), LengthUnit.Millimetres);

        Assert.Equal(["guitar", "board", "supply", "amp", "tuner", "clip"], sheet.Gear.Select(line => line.Name));
        Assert.Equal((2000 + 1000 + 15_000 + 500 + 50).G, sheet.Mass);
    }

    [Fact]
    public void Leads_are_long_in_the_unit_of_whoever_reads_it()
    {
        var plan = LeadPlan.Of(A.Draft().Through(A.Amp()).Problem(), A.Rig());

        // 6 m, the usual way to the board, are 19.7 ft (a foot is 304.8 mm exactly; NIST SP 811, appendix B), and the next longer lead sold is bought.
        Assert.Contains(PackSheet.Of(plan, LengthUnit.Inches).Leads, line => line.Name == "instrument lead, 20 ft, to buy or make");
    }

    [Fact]
    public void Leads_go_by_their_names_what_is_missing_by_what_to_get_and_spares_come_on_top()
    {
        var draft = A.Draft().With(A.Device("a"), A.Device("b"), A.Device("c")).Through(A.Amp()) with
        {
            Leads = [A.Lead("patch") with { Name = "Short patch", Length = 300.Mm }, A.Lead("stage") with { Name = "Stage lead", Kind = LeadKind.Instrument, Length = 6000.Mm }],
        };

        var leads = PackSheet.Of(LeadPlan.Of(draft.Problem(), A.Rig().Placing("a", 0, 0).Placing("b", 100, 0).Placing("c", 200, 0)), LengthUnit.Millimetres).Leads;

        Assert.Equal(
            [
                new PackLine(1, "Stage lead, 6 m"), new PackLine(1, "Short patch, 30 cm"), new PackLine(1, "patch lead, 15 cm, to buy or make"), new PackLine(1, "instrument lead, 3 m, to buy or make"),
                new PackLine(2, "spare instrument lead"), new PackLine(1, "spare patch lead"), new PackLine(1, "mains lead for the amp"),
            ],
            leads);
    }

    [Fact]
    public void A_loop_takes_two_leads_more()
    {
        var problem = A.Draft().With(A.Device("a"), A.Device("b")).Through(A.Amp().Looped()).Problem();

        var leads = PackSheet.Of(LeadPlan.Of(problem, A.Rig().Placing("a", 0, 0).Placing("b", 100, 0).Chained("a", "b")), LengthUnit.Millimetres).Leads;

        Assert.Contains(new PackLine(2, "loop lead, 3 m, to buy or make"), leads);
        Assert.DoesNotContain(leads, line => line.Name.StartsWith("patch lead", StringComparison.Ordinal));
    }

    [Fact]
    public void Power_adapters_and_batteries_are_counted_from_the_hook_up()
    {
        var problem = A.Draft()
            .With(A.Device("a").Drawing(10), A.Device("b").Drawing(10), A.Device("c").Drawing(250), A.Device("d").Drawing(5).OnBatteryToo(), A.Device("e").Drawing(5, Polarity.Positive))
            .FedBy(A.Outlet("1"), A.Outlet("2"), A.Outlet("3"), A.Outlet("4"), A.Outlet("5"))
            .Problem();
        var rig = A.Rig().Feeding("a", "1").Feeding("b", "1").FeedingParallel("c", 9, "2", "3", "4").OnBattery("d").Feeding("e", "5", reversed: true);

        var leads = PackSheet.Of(LeadPlan.Of(problem, rig), LengthUnit.Millimetres).Leads.ToDictionary(line => line.Name, line => line.Count);

        Assert.Equal((4, 1, 2, 1, 1), (leads["power lead"], leads["power splitter"], leads["parallel power lead"], leads["polarity-reversing power lead"], leads["fresh battery"]));
        Assert.DoesNotContain("series power lead", leads);
    }
}
