namespace GigRig.Domain.Gear;

/// <summary>
/// The key of a sonic job: lower-case letters, digits, <c>-</c> and <c>.</c>; a dot narrows. Built-in keys are in <see cref="RoleCatalogue"/>;
/// any other well-formed key is a role of the owner's own and works the same way.
/// </summary>
public readonly record struct Role(string Key)
{
    public const int MaxLength = 60;

    /// <summary>Whether a function of this role meets a need for <paramref name="need"/>: <c>drive.high</c> meets <c>drive</c>, never the other way.</summary>
    public bool Meets(Role need) => Key == need.Key || Key.StartsWith(need.Key + ".", StringComparison.Ordinal);

    /// <summary>The role one dot wider: <c>drive</c> for <c>drive.high</c>; null where there is no dot.</summary>
    public Role? Wider => Key.LastIndexOf('.') is > 0 and var dot ? new Role(Key[..dot]) : null;

    /// <summary>Parts between dots are not empty; 1–60 characters.</summary>
    public static bool IsWellFormed(string? key) =>
        key is { Length: > 0 and <= MaxLength }
        && key.All(c => c is (>= 'a' and <= 'z') or (>= '0' and <= '9') or '-' or '.')
        && key.Split('.').All(part => part.Length > 0);

    public override string ToString() => Key;
}
