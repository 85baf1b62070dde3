using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

public sealed class MainsSheetTests
{
    private static readonly RigProblemDraft Draft = A.Draft()
        .FedBy(A.Supply(A.Outlet("1")) with { Name = "Brick", Mains = new(100, 240, MainsPlug.F, 25) })
        .Through(A.Amp() with { Name = "Combo", Mains = new(230, Plug: MainsPlug.F, Watts: 60) });

    [Fact]
    public void It_counts_sockets_and_watts() => Assert.Equal("2 mains sockets, 85 W in all", MainsSheet.Of(Draft.Problem()).Sockets);

    [Fact]
    public void Where_the_venue_is_not_known_the_label_is_to_be_looked_at()
    {
        var sheet = MainsSheet.Of(Draft.Problem());

        Assert.Equal(
            [new("Brick", "100–240 V, 25 W, type F plug", "look at its label for the voltage", false), new("Combo", "230 V, 60 W, type F plug", "look at its label for the voltage", false)],
            sheet.Lines);
        Assert.Equal("", sheet.Venue);
    }

    [Fact]
    public void Abroad_it_warns_of_the_wrong_voltage_and_names_the_adapter()
    {
        var sheet = MainsSheet.Of(At(120, MainsPlug.B));

        Assert.Equal("120 V, type B sockets", sheet.Venue);
        Assert.Equal("voltage fits; an adapter from plug F to socket B that carries the protective earth", sheet.Lines[0].There);
        Assert.True(sheet.Lines[1].Dangerous);
        Assert.StartsWith("Do not plug it in: 120 V is too little for it.", sheet.Lines[1].There, StringComparison.Ordinal);
    }

    [Fact]
    public void The_adapters_go_into_the_pack_list()
    {
        Assert.Contains(new PackLine(2, "mains plug adapter, F to B"), PackSheet.Of(LeadPlan.Of(At(120, MainsPlug.B), A.Rig()), LengthUnit.Millimetres).Leads);
        Assert.DoesNotContain(PackSheet.Of(LeadPlan.Of(At(230, MainsPlug.F), A.Rig()), LengthUnit.Millimetres).Leads, line => line.Name.Contains("adapter", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_with_a_plug_needs_no_lines() => Assert.Empty(MainsSheet.Of(A.Draft().Problem()).Lines);

    private static RigProblem At(int volts, MainsPlug socket) => (Draft with { Event = A.Event() with { Venue = new(volts, socket) } }).Problem();
}
