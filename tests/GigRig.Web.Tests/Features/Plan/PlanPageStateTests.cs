using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Planning;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Plan;
using GigRig.Web.Queue;
using GigRig.Web.Tests.Hosting;
using Xunit;

namespace GigRig.Web.Tests.Features.Plan;

public sealed class PlanPageStateTests : IAsyncLifetime
{
    private readonly TaskCompletionSource<PlanOutcome> slow = new();
    private Library library = null!;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        library = await Library.OpenAsync();
        await library.WithAsync(A.Board(460, 140));
        await library.WithAsync(A.Device("tuner").Doing("tuner") with { Name = "Tuner" });
        await library.WithAsync(A.Device("echo").Doing("delay") with { Name = "Echo" });
        await library.WithAsync(A.Device("lent").Doing("reverb") with { Name = "Lent reverb" }, GearStatus.LentOut);
        await library.WithAsync(A.Event() with { Name = "Jam", Needs = [new(new("tuner")), new(new("delay"))] });
    }

    public ValueTask DisposeAsync() => library.DisposeAsync();

    [Fact]
    public async Task Only_gear_that_is_ready_is_offered()
    {
        using var state = await LoadedAsync(RealPlanner);

        Assert.Equal(["Echo", "Tuner"], state.Offer!.Devices.Select(device => device.Name));
        Assert.True(state.Offer.CanPlan);
    }

    [Fact]
    public async Task An_empty_library_says_what_is_lacking()
    {
        await using var empty = await Library.OpenAsync();
        using var state = StateOf(empty, RealPlanner);
        await state.LoadAsync(Cancel);

        Assert.True(state.Offer is { LacksBoards: true, LacksDevices: true, LacksEvents: true, CanPlan: false });
        await state.PlanAsync();
        Assert.Null(state.Answer);
    }

    [Fact]
    public async Task Leads_that_are_ready_and_the_picked_instrument_are_part_of_the_question()
    {
        await library.WithAsync(A.Lead("short"));
        await library.WithAsync(A.Lead("lent"), GearStatus.LentOut);
        await library.WithAsync(A.Instrument("bass"));
        await library.WithAsync(A.Instrument("guitar"));
        using var state = await LoadedAsync(RealPlanner);

        await state.PlanAsync();
        Assert.Equal(["short"], state.Answer!.Problem.Leads.Select(lead => lead.Name));
        Assert.Equal("bass", state.Answer.Problem.Instrument?.Name);

        state.Select(new(Instrument: state.Offer!.Instruments[1].Id.ToString()));
        await state.PlanAsync();
        Assert.Equal("guitar", state.Answer!.Problem.Instrument?.Name);
    }

    [Fact]
    public async Task The_real_planner_proposes_a_rig_that_is_saved_under_its_name()
    {
        using var state = await LoadedAsync(RealPlanner);

        await state.PlanAsync();
        var id = await state.SaveAsync("  Friday ", Cancel);

        var proposed = Assert.IsType<PlanOutcome.Proposed>(state.Answer!.Outcome);
        var saved = await library.Rigs.FindAsync(id, Cancel);
        Assert.Equal(("Friday", ""), (saved!.Item.Name, saved.Item.Note));
        Assert.Equal(proposed.Best.Rig, saved.Item.Rig);
    }

    [Fact]
    public async Task A_second_rig_for_the_same_night_is_not_called_like_the_first()
    {
        using var state = await LoadedAsync(RealPlanner);
        Assert.Equal("Jam", state.SuggestedName("Jam"));

        await state.PlanAsync();
        await state.SaveAsync("jam", Cancel);
        await state.SaveAsync("Jam 2", Cancel);
        await state.LoadAsync(Cancel);

        Assert.Equal("Jam 3", state.SuggestedName("Jam"));
        Assert.Equal("Wedding", state.SuggestedName("Wedding"));
    }

    [Fact]
    public async Task A_ban_goes_into_the_next_question_and_a_repair_can_be_tried_out()
    {
        using var state = await LoadedAsync(RealPlanner);
        var echo = state.Offer!.Devices[0].Id;

        state.ToggleBan(echo);
        await state.PlanAsync();
        var impossible = Assert.IsType<PlanOutcome.Impossible>(state.Answer!.Outcome);
        var repair = impossible.Repairs.First(repair => repair.Sentence.ToString().StartsWith("Allow Echo again", StringComparison.Ordinal));
        await state.TryOutAsync(repair, LengthUnit.Inches);

        Assert.Equal(repair.Sentence.In(LengthUnit.Inches), state.Answer.AsIf);
        Assert.IsType<PlanOutcome.Proposed>(state.Answer.Outcome);
        Assert.True(state.Wishes.Bans(echo));
    }

    [Fact]
    public async Task While_a_plan_is_under_way_a_second_question_is_not_asked()
    {
        var asked = 0;
        using var state = await LoadedAsync((_, _, _) =>
        {
            asked++;
            return slow.Task;
        });

        var first = state.PlanAsync();
        await state.PlanAsync();
        slow.SetResult(new PlanOutcome.Undecided(0, TimeSpan.Zero));
        await first;

        Assert.Equal(1, asked);
        Assert.Null(state.Run);
    }

    [Fact]
    public async Task Stopping_asks_the_planner_to_end_and_shows_what_it_has()
    {
        using var state = await LoadedAsync(UntilStopped);

        var plan = state.PlanAsync();
        state.Stop();
        await plan;

        Assert.IsType<PlanOutcome.Undecided>(state.Answer!.Outcome);
    }

    [Fact]
    public async Task Leaving_the_page_stops_the_plan_and_nothing_is_shown_any_more()
    {
        var state = await LoadedAsync(UntilStopped);
        var plan = state.PlanAsync();
        var shown = 0;
        state.Changed += () => shown++;

        state.Dispose();
        await plan;

        Assert.Equal((0, (PlanAnswer?)null), (shown, state.Answer));
    }

    [Fact]
    public async Task Picking_something_else_drops_the_answer_to_the_old_question()
    {
        using var state = await LoadedAsync(UntilStopped);
        var plan = state.PlanAsync();

        state.Select(new(Amp: PlanSelection.None));
        await plan;

        Assert.Null(state.Answer);
    }

    [Fact]
    public async Task The_best_rig_so_far_can_be_seen_while_it_is_looked_for()
    {
        using var state = await LoadedAsync((_, progress, _) =>
        {
            progress!.Report(new(null, 30, TimeSpan.FromSeconds(1)));
            return slow.Task;
        });

        var plan = state.PlanAsync();

        Assert.Equal(30, state.Run!.Latest!.Bound);
        slow.SetResult(new PlanOutcome.Undecided(30, TimeSpan.Zero));
        await plan;
    }

    [Fact]
    public async Task A_full_queue_is_said_and_not_taken_for_an_answer()
    {
        using var state = new PlanPageState(library.Gear, library.Events, library.Roles, library.Rigs, new PlanQueue(RealPlanner, atOnce: 1, waiting: -1), library.Time);
        await state.LoadAsync(Cancel);

        await state.PlanAsync();

        Assert.True(state.TurnedAway);
        Assert.Null(state.Answer);
    }

    [Fact]
    public async Task A_question_that_makes_no_sense_is_refused_with_its_complaints()
    {
        using var state = await LoadedAsync(RealPlanner);

        state.TogglePin(new("a thing of somebody else"));
        await state.PlanAsync();

        Assert.Contains("a thing of somebody else", Assert.Single(state.Complaints).Message);
        Assert.Null(state.Answer);
    }

    [Fact]
    public async Task Nothing_can_be_saved_before_there_is_a_rig()
    {
        using var state = await LoadedAsync(RealPlanner);

        await Assert.ThrowsAsync<InvalidOperationException>(() => state.SaveAsync("Friday", Cancel));
    }

    private static Task<PlanOutcome> RealPlanner(RigProblem problem, IProgress<PlanProgress>? progress, CancellationToken cancel) =>
        new RigPlanner().PlanAsync(problem, null, progress, cancel);

    private static async Task<PlanOutcome> UntilStopped(RigProblem problem, IProgress<PlanProgress>? progress, CancellationToken cancel)
    {
        await Task.Delay(Timeout.Infinite, cancel).ContinueWith(_ => { }, TaskScheduler.Default);
        return new PlanOutcome.Undecided(0, TimeSpan.Zero);
    }

    private static PlanPageState StateOf(Library library, AskPlanner ask) => new(library.Gear, library.Events, library.Roles, library.Rigs, new PlanQueue(ask), library.Time);

    private async Task<PlanPageState> LoadedAsync(AskPlanner ask)
    {
        var state = StateOf(library, ask);
        await state.LoadAsync(Cancel);
        return state;
    }
}
