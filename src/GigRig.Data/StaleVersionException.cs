namespace GigRig.Data;

/// <summary>What was to be saved or deleted has been changed or deleted since it was read. Nothing was written.</summary>
public sealed class StaleVersionException : NotSavedException
{
    internal StaleVersionException(string thing, Guid id, int yours, int? stored, IReadOnlyList<string>? differing = null)
        : base(Sentence(thing, yours, stored, differing ?? []))
    {
        Thing = thing;
        Id = id;
        Yours = yours;
        StoredVersion = stored;
        Differing = differing ?? [];
    }

    /// <summary>Its kind and name, such as <c>device "Tape echo"</c>.</summary>
    public string Thing { get; }

    public Guid Id { get; }

    /// <summary>The version that was given.</summary>
    public int Yours { get; }

    /// <summary>The version in the store; null where the thing is no longer there.</summary>
    public int? StoredVersion { get; }

    /// <summary>Which fields differ between what was given and what is stored.</summary>
    public IReadOnlyList<string> Differing { get; }

    private static string Sentence(string thing, int yours, int? stored, IReadOnlyList<string> differing)
    {
        if (stored is null)
            return $"The {thing} is not there any more. Bring it back first, or save it as a new one.";
        var what = differing.Count == 0 ? "" : $" Yours differs from it in: {string.Join(", ", differing)}.";
        return $"The {thing} was changed meanwhile: you have version {yours}, stored is version {stored}.{what} Load it again and repeat your change.";
    }
}
