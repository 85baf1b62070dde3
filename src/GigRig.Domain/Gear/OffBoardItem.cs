using GigRig.Domain.Units;

namespace GigRig.Domain.Gear;

/// <summary>An owned thing that does a role without board space, such as a clip-on tuner.</summary>
public sealed record OffBoardItem(GearId Id, string Name, Grams Mass, ValueList<RoleFunction> Functions);
