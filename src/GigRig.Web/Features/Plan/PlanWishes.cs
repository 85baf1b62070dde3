using GigRig.Domain;
using GigRig.Domain.Gear;

namespace GigRig.Web.Features.Plan;

/// <summary>The musician's say about single things: pinned must come along, banned stays home, the rest is up to the planner.</summary>
public sealed record PlanWishes(ValueList<GearId> Pinned, ValueList<GearId> Banned)
{
    public static PlanWishes None { get; } = new([], []);

    public bool Pins(GearId id) => Pinned.Contains(id);

    public bool Bans(GearId id) => Banned.Contains(id);

    /// <summary>Pins it, or lets go of the pin. A pin lifts a ban.</summary>
    public PlanWishes TogglePin(GearId id) => new(Toggle(Pinned, id), Without(Banned, id));

    /// <summary>Bans it, or lets it come again. A ban lifts a pin.</summary>
    public PlanWishes ToggleBan(GearId id) => new(Without(Pinned, id), Toggle(Banned, id));

    private static ValueList<GearId> Toggle(ValueList<GearId> ids, GearId id) => ids.Contains(id) ? Without(ids, id) : [.. ids, id];

    private static ValueList<GearId> Without(ValueList<GearId> ids, GearId id) => ids.Where(other => other != id).ToValueList();
}
