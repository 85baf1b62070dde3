using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Queue;

namespace GigRig.Web.Features.Workbench;

/// <summary>Why the planner left the board as it was.</summary>
public sealed record BenchRefusal(string Title, ValueList<string> Reasons);

/// <summary>
/// Lets the planner arrange what the hands left open; what is locked stays exactly where it stands. One question at a time; its answer is one move, undone
/// like any other.
/// </summary>
public sealed class BenchPlanner(PlanQueue queue, AskTidying tidy, TimeProvider time) : IDisposable
{
    private bool left;
    private bool tidying;
    private BoardEdit? asked;

    /// <summary>Raised on any thread when something to show has changed.</summary>
    public event Action? Changed;

    /// <summary>Null while nothing is being planned.</summary>
    public PlanRun? Run { get; private set; }

    /// <summary>Null unless the last question could not be answered with a rig.</summary>
    public BenchRefusal? Refusal { get; private set; }

    /// <summary>The refusal as long as the board is as it was asked about; of another board it says nothing.</summary>
    public BenchRefusal? RefusalOf(BoardEdit edit) => edit == asked ? Refusal : null;

    /// <summary>Stands the same things anew, with shorter leads and an easier reach; audio order and hook-up stay as they are.</summary>
    public Task TidyAsync(BoardEditor editor) => AskAsync(editor, tidying: true, async run => await run.TidyAsync(queue, tidy, editor.Rig) switch
    {
        TidyOutcome.Tidied tidied => Taken(editor, tidied.Rig, editor.Edit.Locked.Count == 0 ? "Tidied" : "Fitted the rest around what is locked"),
        TidyOutcome.NoRoom noRoom => NoRoom(noRoom.Conflict, editor.Unit),
        null => Full,
        _ => Unanswered,
    });

    /// <summary>Plans the event again; anything that is not locked may come or go.</summary>
    public Task PlanAgainAsync(BoardEditor editor) => AskAsync(editor, tidying: false, async run => await run.AskAsync(queue) switch
    {
        QueueAnswer.Answered { Outcome: PlanOutcome.Proposed proposed } => Taken(editor, proposed.Best.Rig, EditWords.PlannedAgain(editor.Problem, editor.Rig, proposed.Best.Rig)),
        QueueAnswer.Answered { Outcome: PlanOutcome.Impossible impossible } => NoRoom(impossible.Conflict, editor.Unit),
        QueueAnswer.Full => Full,
        _ => Unanswered,
    });

    /// <summary>How the running question is getting on; null where it is told in wants.</summary>
    public string? ProgressIn(LengthUnit unit) => (tidying, Run?.Latest?.Best) switch
    {
        (false, _) => null,
        (true, null) => "Looking for a place for everything.",
        (true, { } best) => $"Everything stands, with {LengthText.Format(best.Score.Leads, unit)} of patch lead so far.",
    };

    public void Stop() => Run?.Stop();

    /// <summary>Forgets why the last question was refused.</summary>
    public void Forget() => Refusal = null;

    public void Dispose()
    {
        (left, Changed) = (true, null);
        Stop();
    }

    private static BenchRefusal Full => new("Several plans are being worked out already. Nothing was tried", ["Ask again in a moment."]);

    private static BenchRefusal Unanswered => new("The search ended before an answer was found. The board is as it was", ["Ask again, or unlock something."]);

    private static BenchRefusal NoRoom(ValueList<ConflictPart> conflict, LengthUnit unit) => new("Proved: it cannot be done", conflict.Select(part => part.Sentence.In(unit)).ToValueList());

    private static RigProblemDraft Question(RigProblem problem, BoardEdit edit) => problem.Draft with
    {
        Options = problem.Options with { Arrange = true, Alternatives = 0, Fixed = edit.Locked.Select(edit.PlacementOf).OfType<Placement>().ToValueList() },
    };

    private async Task AskAsync(BoardEditor editor, bool tidying, Func<PlanRun, Task<BenchRefusal?>> ask)
    {
        if (Run is not null)
            return;
        Forget();
        asked = editor.Edit;
        switch (RigProblem.Create(Question(editor.Problem, editor.Edit)))
        {
            case ProblemCheck.Refused refused:
                Refusal = new("This cannot be asked as it stands", refused.Complaints.Select(complaint => complaint.Message).ToValueList());
                break;
            case ProblemCheck.Accepted accepted:
                this.tidying = tidying;
                await RunAsync(accepted.Problem, ask);
                break;
        }

        Changed?.Invoke();
    }

    private async Task RunAsync(RigProblem problem, Func<PlanRun, Task<BenchRefusal?>> ask)
    {
        using var run = Run = new PlanRun(problem, time, () => Changed?.Invoke());
        Changed?.Invoke();
        try
        {
            Refusal = await ask(run);
        }
        finally
        {
            Run = null;
        }
    }

    private BenchRefusal? Taken(BoardEditor editor, Rig rig, string words)
    {
        if (!left)
            editor.Take(rig, words);
        return null;
    }
}
