using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear.Forms;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Forms;

/// <summary>The kinds beside devices: what is shown reads back the same, and faults show at their field.</summary>
public sealed class OtherFormsTests
{
    [Fact]
    public void A_board_reads_back_the_same() =>
        ShouldReadBack(new BoardForm(), A.Board(620, 330).Railed(10, 145).Railed(185, 320).KeepingOut(280, 320, 60, 10).Overhanging(0, 20, 30, 40).Bearing(9000).Clearing(45, 90));

    [Fact]
    public void A_supply_reads_back_the_same() =>
        ShouldReadBack(new SupplyForm(), A.Supply(A.Outlet("1").AtVolts(9, 12, 18), A.Outlet("2").Sharing("a"), A.Outlet("3").Alternating()).Mounted(SupplyMount.Under, 160, 85, 32).Totalling(900) with { Mains = new(100, 240, MainsPlug.F, 30) });

    [Fact]
    public void A_supply_off_the_board_needs_no_size() => ShouldReadBack(new SupplyForm(), A.Supply(A.Outlet("1")));

    [Fact]
    public void An_amp_reads_back_the_same() => ShouldReadBack(new AmpForm(), A.Amp().Looped().WithChannels("clean", "drive.high") with { LoopLevel = SignalLevel.Line, Mains = new(230, Plug: MainsPlug.G) });

    [Fact]
    public void An_off_board_item_reads_back_the_same() => ShouldReadBack(new OffBoardForm(), A.OffBoard("clip").Doing("tuner"));

    [Fact]
    public void A_lead_reads_back_the_same() =>
        ShouldReadBack(new LeadForm(), new Lead(new("lead"), "Patch", LeadKind.Patch, 150.Mm, PlugShape.Slim, PlugShape.Angled, 8, 130));

    [Fact]
    public void An_instrument_reads_back_the_same() => ShouldReadBack(
        new InstrumentForm(), new Instrument(new("i"), "Old one", "bass", InstrumentFamily.Bass) { Pickup = new(2500, 110, 250_000, Active: false) });

    [Theory]
    [InlineData(0)]
    [InlineData(1000)]
    public void A_count_of_leads_beyond_its_limits_is_refused(int count)
    {
        var form = new LeadForm { Name = "Patch", Long = "150 mm", Count = count };
        form.Changed("count");

        Assert.Equal($"The count of lead Patch is {count}; give 1 to 999.", form.Errors.At("count"));
    }

    [Fact]
    public void A_second_outlet_is_like_the_first_with_the_next_number()
    {
        var form = new SupplyForm { Outlets = [new() { Id = "1", Volts = "18", Current = 250 }] };
        form.AddOutlet();

        Assert.Equal(("2", "18", 250), (form.Outlets[1].Id, form.Outlets[1].Volts, form.Outlets[1].Current));
    }

    [Fact]
    public void Two_outlets_of_one_name_are_refused()
    {
        var form = new SupplyForm { Name = "Brick", Mount = SupplyMount.Off, Mass = 500, Outlets = [new() { Id = "1" }, new() { Id = "1" }] };

        Assert.Null(form.Read());
    }

    [Fact]
    public void Fewer_than_no_splitters_are_refused()
    {
        var form = new AdaptersForm { Splitter = -1 };
        form.Changed("splitter");

        Assert.Contains("-1", form.Errors.At("splitter"));
    }

    private static void ShouldReadBack<T>(GearForm<T> form, T thing)
        where T : class
    {
        form.Show(new(thing, new()));
        var read = form.Read();
        Assert.True(form.Errors.None, string.Join(Environment.NewLine, All(form)));
        Assert.Equal(Unnamed(thing), Unnamed(read!.Thing));
    }

    private static IEnumerable<string> All(GearForm form)
    {
        form.Errors.ShowAll();
        return form.Errors.Shown.Select(error => error.ToString());
    }

    /// <summary>A form knows no id: the store gives one.</summary>
    private static object Unnamed(object thing) => thing switch
    {
        Board board => board with { Id = default },
        Supply supply => supply with { Id = default },
        Amp amp => amp with { Id = default },
        OffBoardItem item => item with { Id = default },
        Lead lead => lead with { Id = default },
        Instrument instrument => instrument with { Id = default },
        _ => thing,
    };
}
