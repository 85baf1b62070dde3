using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;

namespace GigRig.Planning;

/// <summary>What no choice of things and places can mend: a supply too tall for the space under the board, two fixed things that overlap.</summary>
internal static class Faults
{
    /// <summary>The rules about where things stand.</summary>
    public static IReadOnlySet<string> OfPlaces { get; } = new HashSet<string>
    {
        RuleIds.AllowedTurn, RuleIds.InsideBoard, RuleIds.ThingsApart, RuleIds.PlugOverhang, RuleIds.KeepOuts, RuleIds.Rails, RuleIds.SwitchSpacing,
    };

    public static IReadOnlyList<Violation> Of(RigProblem problem) =>
    [
        .. RuleBook.Check(problem, WithSupply(problem)).Where(v => v.RuleId is RuleIds.SupplySpace or RuleIds.Lid)
            .Concat(RuleBook.Check(problem, WithFixed(problem)).Where(v => OfPlaces.Contains(v.RuleId) || v.RuleId == RuleIds.Lid))
            .Distinct(),
    ];

    /// <summary>Wherever a supply on top will stand, it is as tall as it is.</summary>
    private static Rig WithSupply(RigProblem problem) => problem.Supply is { Mount: SupplyMount.Top } supply
        ? Rig.Empty with { Supply = new Placement(supply.Id, default) }
        : Rig.Empty;

    private static Rig WithFixed(RigProblem problem) => Rig.Empty with
    {
        Placements = [.. problem.Options.Fixed.Where(place => place.Id != problem.Supply?.Id)],
        Supply = problem.Options.Fixed.FirstOrDefault(place => place.Id == problem.Supply?.Id),
    };
}
