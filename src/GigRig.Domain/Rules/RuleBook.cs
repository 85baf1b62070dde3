using GigRig.Domain.Rigs;
using GigRig.Domain.Rules.Feeding;
using GigRig.Domain.Rules.Playing;
using GigRig.Domain.Rules.Standing;

namespace GigRig.Domain.Rules;

/// <summary>What <em>feasible</em> means, once, with no solver in sight. Judges the planner's answers and the musician's own moves alike.</summary>
public static class RuleBook
{
    /// <summary>Where things stand, then how they are fed, then what they play.</summary>
    public static IReadOnlyList<IRule> Rules { get; } =
    [
        new KnownThingsRule(),
        new OnceEachRule(),
        new AllowedTurnRule(),
        new InsideBoardRule(),
        new ThingsApartRule(),
        new PlugOverhangRule(),
        new KeepOutsRule(),
        new RailsRule(),
        new LidRule(),
        new SupplySpaceRule(),
        new BoardLoadRule(),
        new SwitchSpacingRule(),
        new FixedPlacesRule(),
        new DevicesFedRule(),
        new OutletSettingRule(),
        new OutletVoltageRule(),
        new OutletKindRule(),
        new OutletPolarityRule(),
        new IsolatedOutletRule(),
        new OutletCurrentRule(),
        new OutletSharingRule(),
        new OutletJoiningRule(),
        new AdapterLeadsRule(),
        new TotalCurrentRule(),
        new MustsCoveredRule(),
        new SoundsPlayableRule(),
        new MassLimitRule(),
        new DeviceLimitRule(),
        new FreeAreaRule(),
        new PinsRule(),
        new BansRule(),
        new AudioChainRule(),
    ];

    /// <summary>Every broken rule; empty for a rig that fits, is fed and does the job.</summary>
    public static ValueList<Violation> Check(RigProblem problem, Rig rig) =>
        Rules.SelectMany(rule => rule.Check(problem, rig)).ToValueList();
}
