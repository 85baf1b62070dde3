namespace GigRig.Domain.Gear;

/// <summary>What a role of the owner's own is called, 1–200 characters. A role may be used without a title and then goes by its key.</summary>
public sealed record RoleTitle(Role Role, string Title);
