using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Web.Queue;

namespace GigRig.Web.Features.Plan;

/// <summary>An answer with the question it belongs to.</summary>
/// <param name="AsIf">The change that was tried out; empty for the musician's own question.</param>
public sealed record PlanAnswer(RigProblem Problem, PlanOutcome Outcome, string AsIf);

/// <summary>What the plan page knows. One plan at a time; leaving the page stops it.</summary>
public sealed class PlanPageState(GearStore gear, EventTypeStore events, RoleStore roles, RigStore rigs, PlanQueue queue, TimeProvider time) : IDisposable
{
    private bool left;
    private HashSet<string> taken = [];

    /// <summary>Raised on any thread when something to show has changed.</summary>
    public event Action? Changed;

    /// <summary>Null until loaded.</summary>
    public PlanOffer? Offer { get; private set; }

    public PlanSelection Selection { get; private set; } = new();

    public PlanWishes Wishes { get; private set; } = PlanWishes.None;

    /// <summary>Null while nothing is being planned.</summary>
    public PlanRun? Run { get; private set; }

    /// <summary>Null until a first answer, and once another question is picked.</summary>
    public PlanAnswer? Answer { get; private set; }

    /// <summary>Which of the proposed rigs is looked at; null where none was proposed.</summary>
    public Proposal? Shown { get; private set; }

    /// <summary>Whether pins, bans or the number of other ways were changed since the answer.</summary>
    public bool WishesChanged { get; private set; }

    /// <summary>Why the question could not be asked.</summary>
    public ValueList<Complaint> Complaints { get; private set; }

    /// <summary>Whether too many others were waiting when it was asked.</summary>
    public bool TurnedAway { get; private set; }

    public async Task LoadAsync(CancellationToken cancel = default)
    {
        Offer = PlanOffer.Of(await gear.AllAsync(cancel), await events.AllAsync(cancel), await roles.AllAsync(cancel));
        taken = (await rigs.AllAsync(cancel)).Select(rig => rig.Item.Name).ToHashSet(StringComparer.CurrentCultureIgnoreCase);
        Wish(Wishes.Among(Offer.Ids));
    }

    public void Select(PlanSelection selection)
    {
        if (selection == Selection)
            return;
        Selection = selection;
        Stop();
        Forget();
    }

    public void TogglePin(GearId id) => Wish(Wishes.TogglePin(id));

    public void ToggleBan(GearId id) => Wish(Wishes.ToggleBan(id));

    public void Wish(PlanWishes wishes)
    {
        if (wishes == Wishes)
            return;
        (Wishes, WishesChanged) = (wishes, Answer is not null);
        Changed?.Invoke();
    }

    /// <summary>Looks at another of the proposed rigs.</summary>
    public void Show(Proposal proposal)
    {
        Shown = proposal;
        Changed?.Invoke();
    }

    /// <summary>Asks for the best rig. Does nothing while a plan is under way.</summary>
    public Task PlanAsync() =>
        Offer is { CanPlan: true } offer ? AskAsync(offer.Draft(Selection, Options(Wishes)), "") : Task.CompletedTask;

    /// <summary>Asks as if a suggested change were made. The library and the event type stay as they are.</summary>
    /// <param name="unit">Of what is then said to be tried out.</param>
    public Task TryOutAsync(Repair repair, LengthUnit unit) => AskAsync(repair.Changed, repair.Sentence.In(unit));

    public void Stop() => Run?.Stop();

    /// <summary>The name of the night, counted on where a saved rig has it: <c>Jam night</c>, <c>Jam night 2</c>.</summary>
    public string SuggestedName(string night) =>
        Enumerable.Range(1, taken.Count + 1).Select(count => count == 1 ? night : $"{night} {count}").First(name => !taken.Contains(name));

    /// <summary>Keeps the rig that was proposed, and says which one it became.</summary>
    /// <exception cref="InvalidOperationException">There is no proposed rig, or the name is empty.</exception>
    public async Task<Guid> SaveAsync(string name, CancellationToken cancel = default)
    {
        if (Answer is not { } answer || Shown is not { } shown)
            throw new InvalidOperationException("There is no proposed rig to save. Plan one first.");
        if (string.IsNullOrWhiteSpace(name))
            throw new InvalidOperationException("A saved rig needs a name.");
        return (await rigs.AddAsync(name.Trim(), answer.AsIf.Length > 0 ? $"Planned as if: {answer.AsIf}" : "", answer.Problem, shown.Rig, cancel)).Id;
    }

    public void Dispose()
    {
        (left, Changed) = (true, null);
        Stop();
    }

    private static PlanOptions Options(PlanWishes wishes) =>
        PlanOptions.Default with { Pin = wishes.Pinned, Ban = wishes.Banned, Alternatives = wishes.Alternatives };

    private async Task AskAsync(RigProblemDraft draft, string asIf)
    {
        if (Run is not null)
            return;
        Forget();
        switch (RigProblem.Create(draft))
        {
            case ProblemCheck.Accepted accepted:
                await AskAsync(accepted.Problem, asIf);
                break;
            case ProblemCheck.Refused refused:
                Complaints = refused.Complaints;
                break;
        }
    }

    private async Task AskAsync(RigProblem problem, string asIf)
    {
        using var run = Run = new PlanRun(problem, time, () => Changed?.Invoke());
        Changed?.Invoke();
        var asked = Selection;
        try
        {
            var answer = await run.AskAsync(queue);
            if (left || asked != Selection)
                return;
            TurnedAway = answer is QueueAnswer.Full;
            Answer = answer is QueueAnswer.Answered { Outcome: var outcome } ? new(problem, outcome, asIf) : null;
            Shown = (Answer?.Outcome as PlanOutcome.Proposed)?.Best;
        }
        finally
        {
            Run = null;
            Changed?.Invoke();
        }
    }

    private void Forget() => (Answer, Shown, WishesChanged, Complaints, TurnedAway) = (null, null, false, [], false);
}
