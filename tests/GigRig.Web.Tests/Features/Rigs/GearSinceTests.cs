using GigRig.Data;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Rigs;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Rigs;

/// <summary>A tuner and an echo out of a library, side by side on a board out of it, in a saved rig; then something happens to them.</summary>
public sealed class GearSinceTests : IAsyncLifetime
{
    private Library library = null!;
    private Stored<OwnedGear<Device>> tuner = null!;
    private Stored<OwnedGear<Device>> echo = null!;
    private Stored<SavedRig> saved = null!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        var board = await library.Gear.AddAsync(A.Board(460, 140), new());
        tuner = await library.Gear.AddAsync(A.Device("tuner").Sized(50, 100).Doing("tuner").WithAudioJacks() with { Name = "Pocket tuner" }, new());
        echo = await library.Gear.AddAsync(A.Device("echo").Sized(70, 120).Doing("delay").WithAudioJacks() with { Name = "Hall echo" }, new());
        var problem = (A.Draft(board.Item.Thing).With(tuner.Item.Thing, echo.Item.Thing) with { Leads = [] }).Problem();
        saved = await library.Rigs.AddAsync("Friday", "", problem, A.Rig().Placing(tuner.Item.Thing.Id.Value, 200, 0).Placing(echo.Item.Thing.Id.Value, 100, 0), Cancel);
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public async Task Nothing_is_said_where_nothing_happened()
    {
        var since = await SinceAsync();

        Assert.False(since.SaysSomething);
        Assert.Null(since.Today);
    }

    [Fact]
    public async Task What_is_lent_out_in_repair_or_deleted_is_named()
    {
        await library.Gear.SaveAsync(tuner with { Item = tuner.Item with { Ownership = new(GearStatus.LentOut) { LentTo = "Jo", BackOn = new(2027, 5, 1) } } }, Cancel);
        await library.Gear.DeleteAsync(echo.Id, echo.Version, Cancel);

        var since = await SinceAsync();

        Assert.Equal(["Pocket tuner is lent out to Jo, back on 1 May 2027.", "Hall echo is not among your gear any more."], since.Lacking);
        Assert.Null(since.Today);
    }

    [Fact]
    public async Task A_box_that_was_measured_anew_is_named_with_the_rules_it_would_break()
    {
        // The echo stands from 100 to 170 mm, the tuner's output plug from 185; at 90 mm the two would overlap.
        await library.Gear.SaveAsync(echo with { Item = echo.Item with { Thing = echo.Item.Thing with { Size = echo.Item.Thing.Size with { Width = 90.Mm } } } }, Cancel);

        var since = await SinceAsync();

        Assert.Equal(["Hall echo"], since.Changed);
        Assert.Contains(since.Broken, violation => violation.RuleId == "things-apart");
        Assert.Equal(90.Mm, since.Today!.FindDevice(echo.Item.Thing.Id)!.Size.Width);
    }

    [Fact]
    public async Task A_lead_bought_since_is_spoken_of_where_it_was_missing()
    {
        await library.WithAsync(A.Lead("long") with { Kind = LeadKind.Instrument, Length = 9000.Mm });

        var since = await SinceAsync();

        Assert.True(since is { LeadsChanged: true, Changed.Count: 0, Broken.Count: 0 });
        Assert.Single(since.Today!.Leads);
    }

    [Fact]
    public async Task What_is_not_at_hand_is_planned_with_no_more_unless_the_rig_holds_it()
    {
        await library.Gear.DeleteAsync(echo.Id, echo.Version, Cancel);
        await library.Gear.SaveAsync(tuner with { Item = tuner.Item with { Thing = tuner.Item.Thing with { Mass = 900.G } } }, Cancel);
        var rig = (await library.Rigs.FindAsync(saved.Id, Cancel))!.Item;
        var without = A.Rig().Placing(tuner.Item.Thing.Id.Value, 200, 0);
        var banned = (rig.Problem.Draft with { Options = PlanOptions.Default with { Ban = [echo.Item.Thing.Id] } }).Problem();

        Assert.Equal([tuner.Item.Thing.Id], GearSince.Of(LeadPlan.Of(banned, without), await library.Gear.AllAsync(Cancel)).Today!.Devices.Select(device => device.Id));
        Assert.Equal(2, (await SinceAsync()).Today!.Devices.Count);
    }

    [Fact]
    public async Task A_lead_that_goes_nowhere_in_the_rig_is_not_spoken_of()
    {
        await library.WithAsync(A.Lead("power") with { Kind = LeadKind.Power });

        Assert.False((await SinceAsync()).SaysSomething);
    }

    [Fact]
    public async Task Taking_the_gear_as_it_is_now_keeps_the_rig_with_it_and_says_nothing_more()
    {
        await library.Gear.SaveAsync(echo with { Item = echo.Item with { Thing = echo.Item.Thing with { Mass = 900.G } } }, Cancel);
        var state = new RigPageState(library.Rigs, library.Links, library.Gear, library.Time);
        await state.LoadAsync(saved.Id);

        await state.TakeGearAsync();

        Assert.False(state.Since!.SaysSomething);
        Assert.Equal(900.G, (await library.Rigs.FindAsync(saved.Id, Cancel))!.Item.Problem.FindDevice(echo.Item.Thing.Id)!.Mass);
        Assert.Equal(2, state.Versions.Count);
    }

    [Fact]
    public void A_rig_whose_things_never_were_in_the_library_is_left_alone()
    {
        var problem = A.Draft().With(A.Device("tuner")).Problem();

        Assert.False(GearSince.Of(LeadPlan.Of(problem, A.Rig().Placing("tuner", 0, 0)), new([], [], [], [], [], [], [], PowerAdapters.None)).SaysSomething);
    }

    private async Task<GearSince> SinceAsync()
    {
        var rig = (await library.Rigs.FindAsync(saved.Id, Cancel))!.Item;
        return GearSince.Of(LeadPlan.Of(rig.Problem, rig.Rig), await library.Gear.AllAsync(Cancel));
    }
}
