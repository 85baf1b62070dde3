using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Feeding;

public sealed class OutletJoiningRuleTests
{
    private static readonly RigProblem Problem = A.Draft()
        .With(A.Device("amp-box").Drawing(150).AtVolts(9, 27))
        .FedBy(
            A.Outlet("1").AtVolts(9, 12), A.Outlet("2").AtVolts(9, 12), A.Outlet("3"),
            A.Outlet("s1").Sharing("s"), A.Outlet("s2").Sharing("s"), A.Outlet("P").Positive(), A.Outlet("A").Alternating())
        .Problem();

    [Fact]
    public void Passes_for_isolated_outlets_in_parallel_and_in_series()
    {
        Judge.Passes(RuleIds.OutletJoining, Problem, A.Rig().FeedingParallel("amp-box", 9, "1", "2", "3"));
        Judge.Passes(RuleIds.OutletJoining, Problem, A.Rig().FeedingSeries("amp-box", 9, "1", "2"));
    }

    [Theory]
    [InlineData("s1", "outlet s1 shares its return and cannot be joined")]
    [InlineData("P", "joined outlets must be of one polarity")]
    [InlineData("A", "outlet A gives AC and cannot be joined")]
    [InlineData("1", "an outlet cannot be joined with itself")]
    public void Fails_for_a_partner_that_cannot_be_joined(string partner, string fault)
    {
        var sentence = $"amp-box is fed from outlet 1 and outlet {partner}: {fault}.";
        Judge.Fails(RuleIds.OutletJoining, Problem, A.Rig().FeedingParallel("amp-box", 9, "1", partner), "amp-box", "", sentence);
        Judge.Fails(RuleIds.OutletJoining, Problem, A.Rig().FeedingSeries("amp-box", 9, "1", partner), "amp-box", "", sentence);
    }

    [Fact]
    public void Fails_in_parallel_at_two_voltages() =>
        Judge.Fails(RuleIds.OutletJoining, Problem, Fed(OutletJoin.Parallel, [9.V, 12.V], "1", "2"), "amp-box", "", "amp-box is fed from outlet 1 and outlet 2: outlets in parallel must be set to one voltage.");

    [Fact]
    public void In_series_the_settings_may_differ() => Judge.Passes(RuleIds.OutletJoining, Problem, Fed(OutletJoin.Series, [9.V, 12.V], "1", "2"));

    [Fact]
    public void Fails_for_three_in_series() =>
        Judge.Fails(RuleIds.OutletJoining, Problem, Fed(OutletJoin.Series, [9.V, 9.V, 9.V], "1", "2", "3"), "amp-box", "", "amp-box is fed from outlet 1, outlet 2 and outlet 3: a series join takes exactly two.");

    [Fact]
    public void Fails_for_one_in_parallel_with_nothing() =>
        Judge.Fails(RuleIds.OutletJoining, Problem, Fed(OutletJoin.Parallel, [9.V], "1"), "amp-box", "", "amp-box is fed from outlet 1: a parallel join takes at least two.");

    [Fact]
    public void Fails_for_two_that_are_not_joined() =>
        Judge.Fails(RuleIds.OutletJoining, Problem, Fed(OutletJoin.Single, [9.V, 9.V], "1", "2"), "amp-box", "", "amp-box is fed from outlet 1 and outlet 2: several outlets must be joined in parallel or in series.");

    private static Rig Fed(OutletJoin join, ValueList<Millivolts> settings, params string[] outlets) =>
        A.Rig().With(new Feed(new("amp-box"), [.. outlets], join, settings[0], settings));
}
