using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs.Checks;

namespace GigRig.Web.Features.Plan;

/// <summary>The musician's say: pinned must come along, banned stays home, the rest is up to the planner, who also looks for so many other ways.</summary>
/// <param name="Alternatives">How many further proposals to look for, 0–20.</param>
public sealed record PlanWishes(ValueList<GearId> Pinned, ValueList<GearId> Banned, int Alternatives = 0)
{
    public static PlanWishes None { get; } = new([], []);

    /// <summary>As an address says them. Banned wins over pinned; a number that can't be is brought within its limits.</summary>
    public static PlanWishes Read(IEnumerable<string>? pinned, IEnumerable<string>? banned, int? alternatives)
    {
        var ban = Ids(banned);
        return new(Ids(pinned).Except(ban).ToValueList(), ban, Math.Clamp(alternatives ?? 0, 0, Bounds.MostAlternatives));
    }

    public bool Pins(GearId id) => Pinned.Contains(id);

    public bool Bans(GearId id) => Banned.Contains(id);

    /// <summary>Pins it, or lets go of the pin. A pin lifts a ban.</summary>
    public PlanWishes TogglePin(GearId id) => this with { Pinned = Toggle(Pinned, id), Banned = Without(Banned, id) };

    /// <summary>Bans it, or lets it come again. A ban lifts a pin.</summary>
    public PlanWishes ToggleBan(GearId id) => this with { Pinned = Without(Pinned, id), Banned = Toggle(Banned, id) };

    /// <summary>Without what is not on offer, such as something sold since the address was kept.</summary>
    public PlanWishes Among(IReadOnlySet<GearId> offered) =>
        this with { Pinned = Pinned.Where(offered.Contains).ToValueList(), Banned = Banned.Where(offered.Contains).ToValueList() };

    private static ValueList<GearId> Ids(IEnumerable<string>? words) =>
        (words ?? []).Where(word => word.Length > 0).Select(word => new GearId(word)).Distinct().ToValueList();

    private static ValueList<GearId> Toggle(ValueList<GearId> ids, GearId id) => ids.Contains(id) ? Without(ids, id) : [.. ids, id];

    private static ValueList<GearId> Without(ValueList<GearId> ids, GearId id) => ids.Where(other => other != id).ToValueList();
}
