using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.Web.Features.Rigs.Links;

namespace GigRig.Web.Features.Rigs;

/// <summary>One saved rig, what is wrong with it by now, and the links to it.</summary>
public sealed class RigPageState(RigStore rigs, ShareLinkStore links, GearStore gear, TimeProvider time)
{
    private Guid? freshLink;

    public bool IsLoaded { get; private set; }

    /// <summary>Null where there is no such rig, or it was deleted.</summary>
    public Stored<SavedRig>? Rig { get; private set; }

    /// <summary>Its leads, worked out once for picture, guesses and lists. Null where there is no rig.</summary>
    public LeadPlan? Plan { get; private set; }

    /// <summary>Empty for a rig that keeps every rule; a later release may know rules that the one which saved it did not.</summary>
    public ValueList<Violation> Violations { get; private set; }

    /// <summary>What became of its gear since it was saved. Null where there is no rig.</summary>
    public GearSince? Since { get; private set; }

    public ValueList<ShareLink> Links { get; private set; }

    /// <summary>What it was each time it was saved, the latest first.</summary>
    public ValueList<RigVersion> Versions { get; private set; }

    /// <summary>The token of the link made last; it can't be had again.</summary>
    public string? FreshToken { get; private set; }

    /// <summary>Why the rig can't be read; empty where it can.</summary>
    public string Fault { get; private set; } = "";

    public async Task LoadAsync(Guid id)
    {
        (Rig, Fault) = await rigs.FindAsync(id).OrFaultAsync();
        Plan = Rig is { Item: var wired } ? LeadPlan.Of(wired.Problem, wired.Rig) : null;
        Violations = Rig is { Item: var saved } ? RuleBook.Check(saved.Problem, saved.Rig) : [];
        Since = Plan is { } plan ? GearSince.Of(plan, await gear.AllAsync()) : null;
        Links = Rig is null ? [] : await links.ForRigAsync(id);
        Versions = Rig is null ? [] : await rigs.VersionsAsync(id);
        IsLoaded = true;
    }

    /// <exception cref="StaleVersionException">It was changed meanwhile; the rig is loaded anew and nothing was written.</exception>
    public async Task RenameAsync(string name, string note)
    {
        var mine = Rig ?? throw new InvalidOperationException("There is no rig to rename.");
        try
        {
            Rig = await rigs.RenameAsync(mine.Id, mine.Version, name.Trim(), note.Trim());
        }
        catch (StaleVersionException)
        {
            await LoadAsync(mine.Id);
            throw;
        }
    }

    /// <summary>Keeps the rig with its things as they are now, whatever rules it breaks then. Does nothing where they are no others.</summary>
    /// <exception cref="StaleVersionException">It was changed meanwhile; the rig is loaded anew and nothing was written.</exception>
    public async Task TakeGearAsync()
    {
        if (Rig is not { } mine || Since?.Today is not { } today)
            return;
        try
        {
            await rigs.SaveAsync(mine with { Item = mine.Item with { Problem = today } });
        }
        finally
        {
            await LoadAsync(mine.Id);
        }
    }

    /// <exception cref="StaleVersionException">It was changed meanwhile; the rig is loaded anew and nothing was deleted.</exception>
    public async Task DeleteAsync()
    {
        var mine = Rig ?? throw new InvalidOperationException("There is no rig to delete.");
        try
        {
            await rigs.DeleteAsync(mine.Id, mine.Version);
        }
        finally
        {
            await LoadAsync(mine.Id);
        }
    }

    public async Task RestoreAsync(Guid id)
    {
        await rigs.RestoreAsync(id);
        await LoadAsync(id);
    }

    public async Task MakeLinkAsync(LinkForm form, LengthUnit unit)
    {
        var before = Links.Select(link => link.Id).ToHashSet();
        Versions = await rigs.VersionsAsync(Rig!.Id);
        FreshToken = await links.CreateAsync(Rig.Id, form.ToLink(time.GetUtcNow().UtcDateTime, Versions[0].Number, unit));
        Links = await links.ForRigAsync(Rig.Id);
        freshLink = Links.First(link => !before.Contains(link.Id)).Id;
    }

    /// <summary>For good: a revoked link never works again.</summary>
    public async Task RevokeAsync(ShareLink link)
    {
        await links.RevokeAsync(link.Id);
        Links = await links.ForRigAsync(Rig!.Id);
        if (link.Id == freshLink)
            FreshToken = null;
    }
}
