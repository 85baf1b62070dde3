using System.Globalization;
using GigRig.Data;
using GigRig.Domain;
using GigRig.Domain.Units;
using GigRig.Web.Sheets;

namespace GigRig.Web.Features.Rigs.History;

/// <summary>What is on either side of a swap list: a rig as it is, or one of the versions of the rig that was come from.</summary>
/// <param name="Key">As it stands in the address: a version's number, another rig's id, or <see cref="AsItIs"/>.</param>
public sealed record SwapSide(string Key, string Title)
{
    public const string AsItIs = "now";
}

/// <summary>Two rigs, or two versions of one, and what to do to get from the first to the second.</summary>
public sealed class RigSwapState(RigStore rigs)
{
    public bool IsLoaded { get; private set; }

    /// <summary>Null where there is no such rig.</summary>
    public string? Name { get; private set; }

    /// <summary>What can be chosen on either side.</summary>
    public IReadOnlyList<SwapSide> Sides { get; private set; } = [];

    /// <summary>Key of what is on the first side.</summary>
    public string From { get; private set; } = SwapSide.AsItIs;

    /// <summary>Key of what is on the second side; null until chosen.</summary>
    public string? To { get; private set; }

    /// <summary>Null where it is not there any more, or can't be read.</summary>
    public SavedRig? First { get; private set; }

    /// <summary>Null until chosen, where it is not there any more, or can't be read.</summary>
    public SavedRig? Second { get; private set; }

    /// <summary>Why something can't be read; empty where all can.</summary>
    public string Fault { get; private set; } = "";

    /// <param name="from">Key of the first side; null for the rig as it is.</param>
    /// <param name="to">Key of the second side; null where none is chosen yet.</param>
    public async Task LoadAsync(Guid id, string? from, string? to)
    {
        Fault = "";
        var versions = await rigs.VersionsAsync(id);
        Name = versions.Count > 0 ? versions[0].Name : null;
        Sides =
        [
            new(SwapSide.AsItIs, $"{Name}, as it is"),
            .. versions.Skip(1).Select(version => new SwapSide($"{version.Number}", $"{version.Name}, as of {version.SavedUtc.ToLocalTime():d MMM yyyy, HH:mm}")),
            .. (await rigs.AllAsync()).Where(rig => rig.Id != id).Select(rig => new SwapSide($"{rig.Id}", rig.Item.Name)),
        ];
        (From, To) = (KeyOf(from ?? SwapSide.AsItIs), to is null ? null : KeyOf(to));
        First = await FindAsync(id, From);
        Second = To is null ? null : await FindAsync(id, To);
        IsLoaded = true;

        // The latest version is the rig as it is.
        string KeyOf(string key) => versions.Count > 0 && key == $"{versions[0].Number}" ? SwapSide.AsItIs : key;
    }

    /// <summary>Null until both sides are there.</summary>
    public SwapSheet? Sheet(LengthUnit unit) =>
        First is { } first && Second is { } second ? SwapSheet.Of(first.Problem, first.Rig, second.Problem, second.Rig, unit) : null;

    private async Task<SavedRig?> FindAsync(Guid id, string key)
    {
        var (found, fault) = await ReadAsync(id, key).OrFaultAsync();
        Fault = Fault.Length > 0 ? Fault : fault;
        return found;
    }

    private async Task<SavedRig?> ReadAsync(Guid id, string key)
    {
        if (key == SwapSide.AsItIs)
            return (await rigs.FindAsync(id))?.Item;
        if (Guid.TryParse(key, out var other))
            return (await rigs.FindAsync(other))?.Item;
        return int.TryParse(key, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? await rigs.FindVersionAsync(id, number) : null;
    }
}
