namespace GigRig.Domain.Gear;

/// <summary>
/// One thing a device, an amp or an off-board item can do. Functions of the same thing with the same section are either/or at any one moment;
/// no section means a section of its own.
/// </summary>
/// <param name="Rating">How well it does it, 1–5; 3 unless the owner says otherwise.</param>
public sealed record RoleFunction(Role Role, int Rating = RoleFunction.DefaultRating, string? Section = null)
{
    public const int DefaultRating = 3;
}
