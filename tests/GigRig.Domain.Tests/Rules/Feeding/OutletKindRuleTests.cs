using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class OutletKindRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("dc").Drawing(60), A.Device("ac").Drawing(60, type: CurrentType.Ac))
        .FedBy(A.Outlet("D"), A.Outlet("A").Alternating())
        .Problem();

    [Fact]
    public void Passes_like_on_like() => Judge.Passes(RuleIds.OutletKind, Problem, A.Rig().Feeding("dc", "D").Feeding("ac", "A"));

    [Fact]
    public void Fails_for_direct_current_from_an_ac_outlet() =>
        Judge.Fails(RuleIds.OutletKind, Problem, A.Rig().Feeding("dc", "A"), "dc", "", "dc needs DC; outlet A gives AC, which can destroy it.");

    [Fact]
    public void Fails_for_alternating_current_from_a_dc_outlet() =>
        Judge.Fails(RuleIds.OutletKind, Problem, A.Rig().Feeding("ac", "D"), "ac", "", "ac needs AC; outlet D gives DC, which can destroy it.");

    [Fact]
    public void Fails_for_each_outlet_of_a_join_that_is_wrong() =>
        Judge.Fails(RuleIds.OutletKind, Problem, A.Rig().FeedingParallel("dc", 9, "D", "A"));
}
