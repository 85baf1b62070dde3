using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Features.Rigs.History;

/// <summary>A rig's versions, and one of them to look at or to go back to.</summary>
public sealed class RigHistoryState(RigStore rigs)
{
    public bool IsLoaded { get; private set; }

    /// <summary>Null where there is no such rig.</summary>
    public Stored<SavedRig>? Rig { get; private set; }

    /// <summary>The latest first; that one is the rig as it is.</summary>
    public ValueList<RigVersion> Versions { get; private set; }

    /// <summary>The version asked for; null where there is none, or it can't be read.</summary>
    public SavedRig? Shown { get; private set; }

    /// <summary>The leads of that version. Null where there is none.</summary>
    public LeadPlan? Plan { get; private set; }

    /// <summary>Why something can't be read; empty where all can.</summary>
    public string Fault { get; private set; } = "";

    /// <param name="number">The version to look at; null for none.</param>
    public async Task LoadAsync(Guid id, int? number = null)
    {
        Versions = await rigs.VersionsAsync(id);
        (Rig, Fault) = await rigs.FindAsync(id).OrFaultAsync();
        (Shown, Fault) = number is { } wanted && Fault.Length == 0 ? await rigs.FindVersionAsync(id, wanted).OrFaultAsync() : (null, Fault);
        Plan = Shown is { } shown ? LeadPlan.Of(shown.Problem, shown.Rig) : null;
        IsLoaded = true;
    }

    /// <summary>Saves an old version as the latest.</summary>
    /// <exception cref="StaleVersionException">The rig was changed meanwhile; it is loaded anew and nothing was written.</exception>
    public async Task GoBackAsync(int number)
    {
        var mine = Rig ?? throw new InvalidOperationException("There is no rig to change.");
        try
        {
            Rig = await rigs.GoBackAsync(mine.Id, mine.Version, number);
        }
        finally
        {
            await LoadAsync(mine.Id, number);
        }
    }
}
