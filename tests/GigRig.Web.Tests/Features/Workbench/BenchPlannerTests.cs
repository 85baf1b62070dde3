using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Planning;
using GigRig.TestKit.Building;
using GigRig.Web.Features.Workbench;
using GigRig.Web.Queue;
using Xunit;
using static GigRig.Web.Tests.Features.Workbench.Benches;

namespace GigRig.Web.Tests.Features.Workbench;

public sealed class BenchPlannerTests
{
    private static readonly RigPlanner Planner = new();

    [Fact]
    public async Task The_rest_is_fitted_around_what_is_locked()
    {
        var editor = Editor();
        editor.MoveTo(Echo, new(50.Mm, 0.Mm));
        editor.ToggleLock(Echo);
        Assert.NotEmpty(editor.Violations);

        await Real().TidyAsync(editor);

        Assert.Equal((50, 0), editor.At(Echo));
        Assert.Empty(editor.Violations);
        Assert.StartsWith("Fitted the rest around what is locked.", editor.Said, StringComparison.Ordinal);
        Assert.Equal(Laid.HookUp, editor.Rig.HookUp);
        Assert.Equal(Laid.Chain, editor.Rig.Chain);
    }

    [Fact]
    public async Task Only_the_things_on_the_board_are_fitted_whether_or_not_they_do_the_job()
    {
        var editor = Editor();
        editor.Remove(Tuner);
        editor.MoveTo(Echo, new(-30.Mm, 0.Mm));

        await Real().TidyAsync(editor);

        Assert.Equal([Echo], editor.Rig.Placements.Select(placement => placement.Id));
        Assert.Equal(["musts-covered"], editor.Violations.Select(fault => fault.RuleId));
    }

    [Fact]
    public async Task Planning_anew_keeps_what_is_locked_and_covers_what_the_event_asks()
    {
        var editor = Editor();
        editor.Remove(Tuner);
        editor.MoveTo(Echo, new(77.Mm, 5.Mm));
        editor.ToggleLock(Echo);

        await Real().PlanAgainAsync(editor);

        Assert.Equal((77, 5), editor.At(Echo));
        Assert.Empty(editor.Violations);
        Assert.StartsWith("Planned again; clip comes along.", editor.Said, StringComparison.Ordinal);
        editor.Undo();
        Assert.Equal([Echo], editor.Rig.Placements.Select(placement => placement.Id));
    }

    [Fact]
    public async Task Planning_anew_names_what_it_takes_off_the_board()
    {
        var editor = Editor();
        editor.Add(Hall);
        editor.Add(Fuzz);

        await Real().PlanAgainAsync(editor);

        // The clip covers the tuner for less weight, and the event asks for nothing else.
        Assert.Equal("Planned again; clip comes along, tuner, echo, hall and fuzz stay home. No rule is broken any more.", editor.Said);
    }

    [Fact]
    public async Task A_refusal_is_about_the_board_that_was_asked_about()
    {
        var editor = Editor((Draft with { Board = A.Board(140, 140) }).Problem());
        var planner = Real();
        editor.Add(Hall);

        await planner.TidyAsync(editor);
        Assert.NotNull(planner.RefusalOf(editor.Edit));
        editor.Undo();
        Assert.Null(planner.RefusalOf(editor.Edit));
    }

    [Fact]
    public async Task What_cannot_be_fitted_is_said_with_the_reason_and_changes_nothing()
    {
        var editor = Editor((Draft with { Board = A.Board(140, 140) }).Problem());
        editor.Add(Hall);
        var before = editor.Edit;
        var planner = Real();

        await planner.TidyAsync(editor);

        Assert.Equal(before, editor.Edit);
        Assert.StartsWith("Proved", planner.Refusal!.Title, StringComparison.Ordinal);
        Assert.NotEmpty(planner.Refusal.Reasons);
        planner.Forget();
        Assert.Null(planner.Refusal);
    }

    [Fact]
    public async Task A_thing_locked_where_nothing_may_stand_is_named()
    {
        var editor = Editor();
        editor.MoveTo(Echo, new(440.Mm, 0.Mm));
        editor.ToggleLock(Echo);
        var planner = Real();

        await planner.TidyAsync(editor);

        Assert.Contains(planner.Refusal!.Reasons, reason => reason.Contains("echo", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Stopping_gives_the_best_so_far_or_leaves_the_board()
    {
        var started = new TaskCompletionSource();
        using var queue = new PlanQueue((_, _, _) => throw new InvalidOperationException("asked"));
        using var planner = new BenchPlanner(
            queue,
            async (_, _, _, cancel) =>
            {
                started.SetResult();
                await Task.Delay(Timeout.Infinite, cancel).ContinueWith(_ => { }, TaskScheduler.Default);
                return new TidyOutcome.Undecided();
            },
            TimeProvider.System);
        var editor = Editor();

        var fitting = planner.TidyAsync(editor);
        await started.Task;
        Assert.NotNull(planner.Run);
        planner.Stop();
        await fitting;

        Assert.Null(planner.Run);
        Assert.Equal(Laid, editor.Rig);
        Assert.Contains("The board is as it was", planner.Refusal!.Title);
    }

    [Fact]
    public async Task Where_too_many_wait_nothing_is_tried()
    {
        using var queue = new PlanQueue((_, _, _) => throw new InvalidOperationException("asked"), atOnce: 0, waiting: 0);
        using var planner = new BenchPlanner(queue, Tidy, TimeProvider.System);

        await planner.TidyAsync(Editor());

        Assert.Contains("Nothing was tried", planner.Refusal!.Title);
    }

    private static BenchPlanner Real() => new(new PlanQueue((problem, progress, cancel) => Planner.PlanAsync(problem, null, progress, cancel)), Tidy, TimeProvider.System);

    private static Task<TidyOutcome> Tidy(RigProblem problem, Rig rig, IProgress<TidyOutcome.Tidied>? progress, CancellationToken cancel) =>
        Planner.TidyAsync(problem, rig, null, progress, cancel);
}
