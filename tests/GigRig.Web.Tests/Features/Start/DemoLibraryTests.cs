using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wishes;
using GigRig.Planning;
using GigRig.Web.Features.Plan;
using GigRig.Web.Features.Start;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Start;

/// <summary>
/// One library, one small board, three nights, three rigs, as players do it (common practice, no source). Nothing here is scripted: the planner finds
/// them. What is asserted are facts about the answers, not where things stand.
/// </summary>
public sealed class DemoLibraryTests : IAsyncLifetime
{
    private Library library = null!;
    private PlanOffer offer = null!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        var demo = new DemoLibrary(library.File, library.Gear);
        await new StartPageState(library.Gear, library.Events, library.Rigs, library.Roles, demo).LookAroundAsync();
        offer = PlanOffer.Of(await library.Gear.AllAsync(Cancel), await library.Events.AllAsync(Cancel), await library.Roles.AllAsync(Cancel));
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public void The_board_that_is_offered_first_is_the_small_one()
    {
        var board = PlanSelection.Pick(offer.Boards, null)!.Item;

        Assert.Equal((460, 140), (board.Width.Value, board.Depth.Value));
    }

    [Fact]
    public async Task The_jam_rig_has_few_boxes()
    {
        var rig = await PlannedAsync(ReadyEventTypes.JamNight);

        Assert.InRange(rig.Boxes.Count, 1, 3);
        Assert.Contains(rig.Coverer("tuner"), rig.Boxes);
        Assert.Contains(rig.Coverer("boost"), rig.Boxes);
    }

    [Fact]
    public async Task The_tour_rig_takes_its_distortion_from_the_amp_and_pushes_it_with_the_equaliser()
    {
        var rig = await PlannedAsync(ReadyEventTypes.VanTour);

        Assert.Equal(rig.Problem.Amp!.Id, rig.Coverer("drive.high"));
        Assert.DoesNotContain(rig.Problem.Devices.Where(device => Plays(device, "drive")).Select(device => device.Id), rig.Boxes.Contains);
        Assert.Equal(Equaliser(rig), rig.Coverer("boost"));
        Assert.Equal([rig.Problem.Amp.Id, Equaliser(rig)], rig.Players("Lead"));
        Assert.Contains(Equaliser(rig), rig.Best.Rig.Chain.Front);
        Assert.Contains(rig.Coverer("delay"), rig.Best.Rig.Chain.Loop);
    }

    [Fact]
    public async Task The_wedding_rig_trades_the_tuner_box_for_the_clip_on_and_gets_echo_and_room_from_one_box()
    {
        var rig = await PlannedAsync(ReadyEventTypes.WeddingFunction);

        Assert.Equal(rig.Problem.OffBoard.Single().Id, rig.Coverer("tuner"));
        Assert.Contains(rig.Coverer("compressor"), rig.Boxes);
        Assert.Contains(rig.Coverer("modulation"), rig.Boxes);
        Assert.Equal(Equaliser(rig), rig.Coverer("boost"));
        Assert.Contains(Equaliser(rig), rig.Players("Solo"));
        Assert.Equal(rig.Coverer("delay"), rig.Coverer("reverb"));
        Assert.Contains(rig.Coverer("delay"), rig.Boxes);
    }

    [Fact]
    public async Task The_three_nights_make_three_different_boards()
    {
        HashSet<string> boards = [];
        foreach (var night in ReadyEventTypes.All)
            boards.Add(string.Join(", ", (await PlannedAsync(night)).Boxes.Order()));

        Assert.Equal(3, boards.Count);
    }

    [Fact]
    public async Task The_same_equaliser_serves_the_tour_and_the_wedding() =>
        Assert.Equal((await PlannedAsync(ReadyEventTypes.VanTour)).Coverer("boost"), (await PlannedAsync(ReadyEventTypes.WeddingFunction)).Coverer("boost"));

    [Fact]
    public void There_is_something_of_everything()
    {
        Assert.InRange(offer.Devices.Count, 20, 30);
        Assert.Equal((2, 2, 1, 1), (offer.Boards.Count, offer.Supplies.Count, offer.Amps.Count, offer.OffBoard.Count));
        var sides = offer.Devices.Count(device => device.Jacks.Any(jack => jack is { Use: JackUse.In, Side: Domain.Geometry.Side.Left or Domain.Geometry.Side.Right }));
        Assert.InRange(sides * 100 / offer.Devices.Count, 55, 75);
    }

    [Fact]
    public async Task The_demo_can_be_taken_away_and_brought_back()
    {
        var demo = new DemoLibrary(library.File, library.Gear);

        var gone = await demo.TakeAwayAsync();
        Assert.Empty((await library.Gear.AllAsync(Cancel)).Devices);
        Assert.Empty(await demo.FindAsync());

        await demo.BringBackAsync(gone);
        Assert.Equal(gone.Count, (await demo.FindAsync()).Count);
    }

    private async Task<Planned> PlannedAsync(EventType night)
    {
        var chosen = offer.Events.Single(stored => stored.Item.Name == night.Name).Id.ToString();
        var problem = Assert.IsType<ProblemCheck.Accepted>(RigProblem.Create(offer.Draft(new(Event: chosen), PlanOptions.Default))).Problem;
        var outcome = await new RigPlanner().PlanAsync(problem, cancel: Cancel);
        var proposed = Assert.IsType<PlanOutcome.Proposed>(outcome);
        Assert.True(proposed.Proven);
        return new(problem, proposed.Best);
    }

    private static GearId Equaliser(Planned rig) => rig.Problem.Devices.Single(device => Plays(device, "equaliser")).Id;

    private static bool Plays(Device device, string role) => device.Functions.Any(function => function.Role.Meets(new(role)));

    private sealed record Planned(RigProblem Problem, Proposal Best)
    {
        public ValueList<GearId> Boxes => Best.Rig.Placements.Select(placement => placement.Id).ToValueList();

        /// <summary>Who covers a need; fails where nobody does.</summary>
        public GearId Coverer(string role) => Best.Coverage.Needs.Single(need => need.Need.Role == new Role(role)).Cover!.Thing;

        public IEnumerable<GearId> Players(string sound) => Best.Coverage.Sounds.Single(covered => covered.Sound.Name == sound).Covers!.Value.Select(cover => cover.Thing);
    }
}
