using GigRig.Domain.Gear;

namespace GigRig.Data;

/// <summary>A thing as it is in the store. Save it back with the version it was read with: if somebody changed it meanwhile, saving refuses.</summary>
/// <param name="Id">Stays the same for ever, also through export and import.</param>
/// <param name="Version">1 when first stored, one more at each change.</param>
public sealed record Stored<T>(Guid Id, int Version, T Item);

/// <summary>An owned thing: its facts, which the planner sees, and what the owner keeps beside them, which nobody else sees.</summary>
public sealed record OwnedGear<T>(T Thing, Ownership Ownership)
    where T : class;

/// <summary>A role the owner added to the built-in ones.</summary>
/// <param name="Title">What it is called on the page.</param>
public sealed record OwnRole(Role Role, string Title);

/// <summary>How stored things are named in problems and rigs.</summary>
public static class Stored
{
    /// <summary>The name a stored thing goes by in problems, rigs and files.</summary>
    public static GearId GearIdOf(Guid id) => new(id.ToString("d"));
}
