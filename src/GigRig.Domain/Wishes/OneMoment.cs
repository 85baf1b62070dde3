using GigRig.Domain.Gear;

namespace GigRig.Domain.Wishes;

/// <summary>
/// Whether several roles can be on together: functions of one section are either/or, and one function may meet two of the roles.
/// Exact; works section by section on the sets of roles met so far.
/// </summary>
internal static class OneMoment
{
    /// <summary>Who plays each role, in the order of <paramref name="roles"/>; null where they cannot be on together.</summary>
    /// <param name="roles">At most <see cref="Events.Sound.MaxRoles"/>.</param>
    /// <param name="functions">All that the rig can do.</param>
    public static ValueList<Cover>? Find(ValueList<Role> roles, IEnumerable<(GearId Thing, RoleFunction Function)> functions)
    {
        var all = (1 << roles.Count) - 1;
        var steps = new Dictionary<int, Step> { [0] = new(0, default, null) };
        foreach (var section in SectionsOf(functions))
        {
            if (steps.ContainsKey(all))
                break;
            // The sets reached before this section, so that it is used once at most.
            foreach (var met in steps.Keys.ToList())
                foreach (var (thing, function) in section)
                    steps.TryAdd(met | RolesMet(roles, function), new(met, thing, function));
        }

        return steps.ContainsKey(all) ? Retrace(roles, steps, all) : null;
    }

    /// <summary>Best-rated first, so that the covers named are the ones a player would choose where there is a choice.</summary>
    private static IEnumerable<List<(GearId Thing, RoleFunction Function)>> SectionsOf(IEnumerable<(GearId Thing, RoleFunction Function)> functions) =>
        functions
            .Select((f, index) => (f.Thing, f.Function, Key: (f.Thing, f.Function.Section, f.Function.Section is null ? index : -1)))
            .GroupBy(f => f.Key, f => (f.Thing, f.Function))
            .Select(section => section.OrderByDescending(f => f.Function.Rating).ToList())
            .OrderByDescending(section => section[0].Function.Rating);

    private static int RolesMet(ValueList<Role> roles, RoleFunction function)
    {
        var met = 0;
        for (var i = 0; i < roles.Count; i++)
            if (function.Role.Meets(roles[i]))
                met |= 1 << i;
        return met;
    }

    private static ValueList<Cover> Retrace(ValueList<Role> roles, Dictionary<int, Step> steps, int all)
    {
        var covers = new Cover[roles.Count];
        for (var met = all; steps[met] is { Function: { } function } step; met = step.Before)
            for (var i = 0; i < roles.Count; i++)
                if (function.Role.Meets(roles[i]))
                    covers[i] = new(roles[i], step.Thing, function);
        return covers.ToValueList();
    }

    private sealed record Step(int Before, GearId Thing, RoleFunction? Function);
}
