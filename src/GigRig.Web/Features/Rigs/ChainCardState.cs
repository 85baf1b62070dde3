using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Rigs;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Features.Rigs;

/// <summary>The audio order of a saved rig, the advice on it and the lengths it allows for: what can be changed about its wiring.</summary>
public sealed class ChainCardState(RigStore rigs)
{
    private Stored<SavedRig>? saved;

    /// <summary>Null until a rig is shown.</summary>
    public ChainEdit? Edit { get; private set; }

    /// <summary>Why the last change was not saved; empty where it was. What was changed is still there.</summary>
    public string Fault { get; private set; } = "";

    public RigProblem Problem => Saved.Item.Problem;

    public ValueList<HeardAdvice> Advice => Edit is { } edit ? ChainAdvice.Of(Problem, edit.Rig) : [];

    private Stored<SavedRig> Saved => saved ?? throw new InvalidOperationException("There is no rig to wire.");

    /// <summary>Shows a rig as it is stored. A change not saved yet stays as long as it is the same version.</summary>
    public void Show(Stored<SavedRig> rig)
    {
        if (saved is { } before && (before.Id, before.Version) == (rig.Id, rig.Version))
            return;
        (saved, Edit, Fault) = (rig, new(rig.Item.Problem, rig.Item.Rig), "");
    }

    /// <summary>False where it could not be saved; then <see cref="Fault"/> says why.</summary>
    public Task<bool> SaveOrderAsync() => SaveAsync(Saved.Item with { Rig = Edit!.Rig });

    /// <summary>The advice is not given for this rig again, as long as it is about the same things.</summary>
    public Task<bool> SilenceAsync(Advice advice, string note) =>
        SaveRigAsync(rig => rig with { Silenced = [.. Others(rig, advice), new(advice.Id, advice.Culprits, note.Trim())] });

    public Task<bool> HearAgainAsync(Advice advice) => SaveRigAsync(rig => rig with { Silenced = Others(rig, advice).ToValueList() });

    public Task<bool> SaveLengthsAsync(WiringAllowances wiring)
    {
        switch (RigProblem.Create(Problem.Draft with { Options = Problem.Options with { Wiring = wiring } }))
        {
            case ProblemCheck.Accepted accepted:
                return SaveAsync(Saved.Item with { Problem = accepted.Problem, Rig = Edit!.Rig });
            case ProblemCheck.Refused refused:
                Fault = refused.Complaints[0].Message;
                return Task.FromResult(false);
            default:
                throw new InvalidOperationException("A third kind of answer.");
        }
    }

    private static IEnumerable<SilencedAdvice> Others(Rig rig, Advice advice) => rig.Silenced.Where(silenced => !silenced.Answers(advice.Id, advice.Culprits));

    private Task<bool> SaveRigAsync(Func<Rig, Rig> change) => SaveAsync(Saved.Item with { Rig = change(Edit!.Rig) });

    private async Task<bool> SaveAsync(SavedRig item)
    {
        try
        {
            Show(await rigs.SaveAsync(Saved with { Item = item }));
            return true;
        }
        catch (Exception refusal) when (refusal is NotSavedException or RefusedThingException)
        {
            Fault = refusal.Message;
            return false;
        }
    }
}
