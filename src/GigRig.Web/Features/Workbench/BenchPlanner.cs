using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Web.Queue;

namespace GigRig.Web.Features.Workbench;

/// <summary>Why the planner left the board as it was.</summary>
public sealed record BenchRefusal(string Title, ValueList<string> Reasons);

/// <summary>Lets the planner arrange what the hands left open. One question at a time; its answer is one move, undone like any other.</summary>
public sealed class BenchPlanner(PlanQueue queue, TimeProvider time) : IDisposable
{
    private bool left;

    /// <summary>Raised on any thread when something to show has changed.</summary>
    public event Action? Changed;

    /// <summary>Null while nothing is being planned.</summary>
    public PlanRun? Run { get; private set; }

    /// <summary>Null unless the last question could not be answered with a rig.</summary>
    public BenchRefusal? Refusal { get; private set; }

    /// <summary>Places the same things anew around those that are locked.</summary>
    public Task FitAsync(BoardEditor editor) => AskAsync(editor, BenchQuestions.SameThings(editor.Problem, editor.Edit), best => Refitted(editor, best), "Fitted the rest around what is locked");

    /// <summary>Plans the event again with what is locked where it stands; anything else may come or go.</summary>
    public Task PlanAnewAsync(BoardEditor editor) => AskAsync(editor, BenchQuestions.Anew(editor.Problem, editor.Edit), best => best.Rig, "Planned the rest anew");

    public void Stop() => Run?.Stop();

    /// <summary>Forgets why the last question was refused.</summary>
    public void Forget() => Refusal = null;

    public void Dispose()
    {
        (left, Changed) = (true, null);
        Stop();
    }

    /// <summary>Where things stand is the planner's; the audio order stays the musician's, and so does the hook-up if it holds.</summary>
    private static Rig Refitted(BoardEditor editor, Proposal best)
    {
        var kept = editor.Rig with { Placements = best.Rig.Placements, Supply = best.Rig.Supply };
        var fedAnew = kept with { HookUp = best.Rig.HookUp };
        return RuleBook.Check(editor.Problem, kept).Count <= RuleBook.Check(editor.Problem, fedAnew).Count ? kept : fedAnew;
    }

    private async Task AskAsync(BoardEditor editor, RigProblemDraft draft, Func<Proposal, Rig> taken, string words)
    {
        if (Run is not null)
            return;
        Forget();
        if (RigProblem.Create(draft) is ProblemCheck.Refused refused)
            Refusal = new("This cannot be asked as it stands", refused.Complaints.Select(complaint => complaint.Message).ToValueList());
        else if (RigProblem.Create(draft) is ProblemCheck.Accepted accepted)
            await AskAsync(editor, accepted.Problem, taken, words);
        Changed?.Invoke();
    }

    private async Task AskAsync(BoardEditor editor, RigProblem problem, Func<Proposal, Rig> taken, string words)
    {
        using var run = Run = new PlanRun(problem, time, () => Changed?.Invoke());
        Changed?.Invoke();
        try
        {
            var answer = await run.AskAsync(queue);
            if (left)
                return;
            if (answer is QueueAnswer.Answered { Outcome: PlanOutcome.Proposed { Best: var best } })
                editor.Take(taken(best), words);
            else
                Refusal = Refused(answer);
        }
        finally
        {
            Run = null;
        }
    }

    private static BenchRefusal Refused(QueueAnswer answer) => answer switch
    {
        QueueAnswer.Full => new("Several plans are being worked out already. Nothing was tried", ["Ask again in a moment."]),
        QueueAnswer.Answered { Outcome: PlanOutcome.Impossible impossible } => new("Proved: it cannot be done. These do not hold together", impossible.Conflict.Select(part => part.Sentence).ToValueList()),
        _ => new("The search ended before an answer was found. The board is as it was", ["Ask again, or unlock something."]),
    };
}
