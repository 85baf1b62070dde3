using System.Text;
using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Gear.Quick;
using GigRig.Web.Features.Gear.Table;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Table;

public sealed class TableImportStateTests : IAsyncLifetime
{
    private const string Good = """
        Kind;Name;Width (in);Depth (in);Weight (lb);Does;Current draw (A);Notes
        device;Meadow;2.7;4.65;0.9;overdrive;0.009;=HYPERLINK("x")
        device;Tower;4 3/4;3 3/4;1;echo;;
        board;Plank;24;12;;;;
        """;

    private Library library = null!;
    private TableImportState state = null!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        state = new(library.Gear, library.Batch, library.Roles);
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public async Task Nothing_is_stored_before_it_is_confirmed()
    {
        await LookAtAsync(Good);

        Assert.True(state.CanImport);
        Assert.Equal(["Meadow", "Tower", "Plank"], state.ToAdd.Select(gear => gear.Name));
        Assert.Empty(await library.Gear.DevicesAsync(Cancel));
    }

    /// <summary>2.7 × 4.65 in are 69 × 118 mm, 0.9 lb are 408 g (25.4 mm and 453.59237 g exactly; NIST SP 811, appendix B).</summary>
    [Fact]
    public async Task Units_of_the_headings_count_and_formulas_are_text()
    {
        await LookAtAsync(Good);
        await state.ImportAsync();

        var meadow = (await library.Gear.DevicesAsync(Cancel)).Single(device => device.Item.Thing.Name == "Meadow").Item;
        Assert.Equal((69.Mm, 118.Mm, 408.G, 9.MilliA), (meadow.Thing.Size.Width, meadow.Thing.Size.Depth, meadow.Thing.Mass, meadow.Thing.Power!.Current));
        Assert.Equal("=HYPERLINK(\"x\")", meadow.Ownership.Note);
        Assert.Equal([Guess.Height, Guess.Jacks, Guess.Switches, Guess.Voltage], meadow.Ownership.Guesses);
        Assert.Equal(610.Mm, Assert.Single(await library.Gear.BoardsAsync(Cancel)).Item.Thing.Width);
        Assert.Equal("Added 3 things.", state.Done);
    }

    [Fact]
    public async Task One_undo_takes_all_of_it_out_again()
    {
        await LookAtAsync(Good);
        await state.ImportAsync();
        await state.UndoAsync();

        Assert.Empty(await library.Gear.DevicesAsync(Cancel));
        Assert.Empty(await library.Gear.BoardsAsync(Cancel));
        Assert.Equal("", state.Done);
    }

    [Fact]
    public async Task An_undo_leaves_all_in_where_one_was_changed_since()
    {
        await LookAtAsync(Good);
        await state.ImportAsync();
        var tower = (await library.Gear.DevicesAsync(Cancel)).Single(device => device.Item.Thing.Name == "Tower");
        await library.Gear.SaveAsync(tower with { Item = tower.Item with { Ownership = new(Note: "mine") } }, Cancel);

        await Assert.ThrowsAsync<StaleVersionException>(state.UndoAsync);

        Assert.Equal(2, (await library.Gear.DevicesAsync(Cancel)).Count);
    }

    [Fact]
    public async Task A_cell_that_will_not_do_holds_all_back_until_it_is_corrected()
    {
        await LookAtAsync("Name,Shape,Draw\nMeadow,huge,9\nTower,compact,65\n");

        var faulty = state.Entries[0];
        Assert.Contains("\"huge\" is neither a size nor a usual one", faulty.FaultAt(LineField.Size));
        Assert.Null(faulty.FaultAt(LineField.Draw));
        Assert.False(state.CanImport);

        state.Correct(faulty, 1, "small");

        Assert.True(state.CanImport);
        Assert.Equal(2, state.ToAdd.Count());
    }

    [Fact]
    public async Task Rows_with_faults_can_stay_out()
    {
        await LookAtAsync("Name,Shape,Draw\nMeadow,huge,9\nTower,compact,65\n");
        state.SkipFaulty = true;
        await state.ImportAsync();

        Assert.Equal("Tower", Assert.Single(await library.Gear.DevicesAsync(Cancel)).Item.Thing.Name);
    }

    [Fact]
    public async Task A_column_taken_for_the_wrong_thing_can_be_mapped_anew()
    {
        await LookAtAsync("Name,Bought at,Job\nMeadow,tuner,corner shop\n");
        Assert.False(state.CanImport);

        state.Map(1, LineField.Roles);

        Assert.Null(state.Columns[2].Field);
        Assert.Equal("tuner", Assert.Single(((Device)state.ToAdd.Single().Thing).Functions).Role.Key);
    }

    [Fact]
    public async Task Without_a_heading_columns_are_those_of_quick_add()
    {
        await LookAtAsync("Meadow;compact;overdrive;9\nTower;120 x 95;echo;65");

        Assert.False(state.HasHeading);
        Assert.Equal(["Meadow", "Tower"], state.ToAdd.Select(gear => gear.Name));
    }

    [Fact]
    public async Task Bare_numbers_are_meant_as_the_owner_says()
    {
        await LookAtAsync("Name,Width,Depth,Weight\nMeadow,2.75,5,1\n");
        state.Mean(new(LengthUnit.Inches, 1000));

        var device = (Device)state.ToAdd.Single().Thing;
        Assert.Equal((70.Mm, 127.Mm, 1000.G), (device.Size.Width, device.Size.Depth, device.Mass));
    }

    [Fact]
    public async Task Things_that_are_there_by_name_stay_out_unless_wanted()
    {
        await library.Gear.AddAsync(A.Device("x") with { Name = "MEADOW" }, new Ownership(), Cancel);
        await LookAtAsync(Good);
        Assert.Equal(["Tower", "Plank"], state.ToAdd.Select(gear => gear.Name));

        state.SkipKnown = false;
        Assert.Equal(3, state.ToAdd.Count());
    }

    /// <summary>0.5 ft are 152 mm, 10 ft 3048 mm (304.8 mm exactly; NIST SP 811, appendix B).</summary>
    [Fact]
    public async Task Leads_and_instruments_come_in_too()
    {
        await LookAtAsync("Kind;Name;Length (ft);Qty;Plugs;Pickup\npatch lead;Short;0.5;6;angled;\ninstrument lead;Long;10;;;\nelectric bass;Low one;;;;active\n");
        await state.ImportAsync();

        var leads = (await library.Gear.LeadsAsync(Cancel)).Select(lead => lead.Item).OrderBy(lead => lead.Thing.Length).ToList();
        Assert.Equal([(LeadKind.Patch, 152.Mm, 6), (LeadKind.Instrument, 3048.Mm, 1)], leads.Select(lead => (lead.Thing.Kind, lead.Thing.Length, lead.Thing.Count)));
        Assert.Equal([[], [Guess.Plugs]], leads.Select(lead => lead.Ownership.Guesses));
        var bass = Assert.Single(await library.Gear.InstrumentsAsync(Cancel)).Item.Thing;
        Assert.Equal(("electric bass", InstrumentFamily.Bass, true), (bass.Kind, bass.Family, bass.Pickup.Active));
    }

    [Fact]
    public async Task Something_too_large_is_refused_with_the_limit()
    {
        await state.LookAtAsync(new MemoryStream(new byte[TableBytes.Most + 1]), LengthUnit.Millimetres, Cancel);

        Assert.Contains("larger than 1 MB", state.Fault);
        Assert.Null(state.Table);
    }

    private Task LookAtAsync(string text) => state.LookAtAsync(new MemoryStream(Encoding.UTF8.GetBytes(text)), LengthUnit.Millimetres, Cancel);
}
