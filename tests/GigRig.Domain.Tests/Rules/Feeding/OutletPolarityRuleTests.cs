using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class OutletPolarityRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("usual").Drawing(60), A.Device("fuzz").Drawing(5, Polarity.Positive), A.Device("ac").Drawing(60, type: CurrentType.Ac))
        .FedBy(A.Outlet("N"), A.Outlet("P").Positive(), A.Outlet("A").Alternating().Positive())
        .OwningAdapters(reverse: 2)
        .Problem();

    [Fact]
    public void Passes_like_on_like() => Judge.Passes(RuleIds.OutletPolarity, Problem, A.Rig().Feeding("usual", "N").Feeding("fuzz", "P"));

    [Fact]
    public void Passes_through_a_reversing_lead() =>
        Judge.Passes(RuleIds.OutletPolarity, Problem, A.Rig().Feeding("usual", "P", reversed: true).Feeding("fuzz", "N", reversed: true));

    [Fact]
    public void Fails_without_it() =>
        Judge.Fails(RuleIds.OutletPolarity, Problem, A.Rig().Feeding("fuzz", "N"), "fuzz", "", "fuzz is centre positive; outlet N is centre negative. A reversing lead is missing.");

    [Fact]
    public void Fails_with_one_that_should_not_be_there() =>
        Judge.Fails(RuleIds.OutletPolarity, Problem, A.Rig().Feeding("usual", "N", reversed: true), "usual", "", "usual is centre negative as outlet N is; the reversing lead must go.");

    [Fact]
    public void Alternating_current_has_no_polarity() => Judge.Passes(RuleIds.OutletPolarity, Problem, A.Rig().Feeding("ac", "A"));
}
