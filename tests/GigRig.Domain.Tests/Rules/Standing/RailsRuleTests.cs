using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.TestKit.Building;

namespace GigRig.Domain.Tests.Rules.Standing;

public sealed class RailsRuleTests
{
    private static readonly RigProblem Problem = A.Draft(A.Board(400, 300).Railed(0, 60).Railed(100, 160).Railed(200, 260))
        .With(A.Device("echo").Sized(70, 120), A.Device("flat").Sized(70, 60), A.Device("slim").Sized(70, 50))
        .Problem();

    [Fact]
    public void Passes_on_a_plain_surface() =>
        Judge.Passes(RuleIds.Rails, A.Draft().With(A.Device("echo")).Problem(), A.Rig().Placing("echo", 0, 61));

    [Theory]
    [InlineData("flat", 100)]
    [InlineData("slim", 110)]
    [InlineData("slim", 0)]
    public void Passes_wholly_on_one_rail(string id, int y) =>
        Judge.Passes(RuleIds.Rails, Problem, A.Rig().Placing(id, 0, y));

    [Fact]
    public void Fails_across_one_rail_and_nothing_else() =>
        Judge.Fails(RuleIds.Rails, Problem, A.Rig().Placing("slim", 0, 120), "slim", "1 rail", "slim bears on 1 rail; it needs two, or to stand wholly on one.");

    [Fact]
    public void Ten_millimetres_of_each_of_two_rails_are_enough_and_nine_are_not()
    {
        // A 60 mm body from y = 50 bears on 50–60 and 100–110.
        Judge.Passes(RuleIds.Rails, Problem, A.Rig().Placing("flat", 0, 50));
        Judge.Fails(RuleIds.Rails, Problem, A.Rig().Placing("flat", 0, 51), "flat", "1 rail", "flat bears on 1 rail; it needs two, or to stand wholly on one.");
    }

    [Fact]
    public void The_whole_of_a_narrower_rail_is_enough()
    {
        var narrow = A.Draft(A.Board(400, 300).Railed(20, 25).Railed(80, 85)).With(A.Device("flat").Sized(70, 60), A.Device("deep").Sized(70, 65)).Problem();
        Judge.Passes(RuleIds.Rails, narrow, A.Rig().Placing("deep", 0, 20));
        Judge.Fails(RuleIds.Rails, narrow, A.Rig().Placing("flat", 0, 21));
    }

    [Fact]
    public void Fails_where_the_body_would_rock_over_the_last_rail()
    {
        var front = A.Draft(A.Board(400, 300).Railed(0, 20).Railed(30, 50)).With(A.Device("deep").Sized(70, 100)).Problem();
        Judge.Passes(RuleIds.Rails, front, A.Rig().Placing("deep", 0, 0));
        Judge.Fails(RuleIds.Rails, front, A.Rig().Placing("deep", 0, 1), "deep", "1 mm", "deep would rock: its middle stands 1 mm outside the rails it bears on.");
    }

    [Fact]
    public void Half_a_millimetre_of_rocking_counts()
    {
        var front = A.Draft(A.Board(400, 300).Railed(0, 20).Railed(30, 50)).With(A.Device("odd").Sized(70, 101)).Problem();
        Judge.Fails(RuleIds.Rails, front, A.Rig().Placing("odd", 0, 0));
    }

    [Fact]
    public void A_supply_on_top_bears_like_a_device()
    {
        var problem = A.Draft(A.Board(400, 300).Railed(0, 60).Railed(100, 160)).FedBy(A.Supply().Mounted(SupplyMount.Top, 200, 80, 30)).Problem();
        Judge.Passes(RuleIds.Rails, problem, A.Rig().PlacingSupply(0, 40));
        Judge.Fails(RuleIds.Rails, problem, A.Rig().PlacingSupply(0, 55));
    }
}
