using GigRig.Domain.Events;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;

namespace GigRig.Domain.Wishes;

/// <summary>Who does a role: a device, the amp or an off-board thing, with the function it uses.</summary>
public sealed record Cover(Role Role, GearId Thing, RoleFunction Function);

/// <summary>A need and who covers it; null where nobody does.</summary>
public sealed record NeedCoverage(Need Need, Cover? Cover);

/// <summary>A sound and who plays each of its roles at that moment; null where it cannot be played.</summary>
public sealed record SoundCoverage(Sound Sound, ValueList<Cover>? Covers);

/// <summary>Who covers what in a rig.</summary>
public sealed record Coverage(ValueList<NeedCoverage> Needs, ValueList<SoundCoverage> Sounds);
