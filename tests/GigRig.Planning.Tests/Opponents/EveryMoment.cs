using GigRig.Domain;
using GigRig.Domain.Gear;

namespace GigRig.Planning.Tests.Opponents;

/// <summary>What a set of things can do: one after the other, and at one moment, when each section has at most one function on.</summary>
internal sealed class EveryMoment(IEnumerable<ValueList<RoleFunction>> things)
{
    /// <summary>Either/or groups; a function without a section is a group of its own.</summary>
    private readonly List<RoleFunction[]> sections =
    [
        .. things.SelectMany(functions => functions.Where(f => f.Section is not null).GroupBy(f => f.Section).Select(g => g.ToArray())
            .Concat(functions.Where(f => f.Section is null).Select(f => new[] { f }))),
    ];

    /// <summary>Zero where nothing does it.</summary>
    public int BestRating(Role role) => sections.SelectMany(s => s).Where(f => f.Role.Meets(role)).Select(f => f.Rating).DefaultIfEmpty().Max();

    /// <summary>Tries every combination of switched-on functions.</summary>
    public bool CanPlay(ValueList<Role> roles) => CanPlay([.. roles], 0);

    private bool CanPlay(IReadOnlyList<Role> missing, int section) =>
        missing.Count == 0
        || (section < sections.Count && (CanPlay(missing, section + 1)
            || sections[section].Any(on => missing.Any(on.Role.Meets) && CanPlay([.. missing.Where(role => !on.Role.Meets(role))], section + 1))));
}
