using GigRig.Domain.Gear;

namespace GigRig.Web.Features.Gear.Quick;

/// <summary>A thing that is about to be stored.</summary>
/// <param name="Thing">Of the kind's own type.</param>
public sealed record NewGear(GearKind Kind, string Name, object Thing, Ownership Ownership);
