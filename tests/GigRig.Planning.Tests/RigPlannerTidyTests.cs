using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests;

public sealed class RigPlannerTidyTests
{
    private static readonly string[] OfPlaces =
    [
        RuleIds.AllowedTurn, RuleIds.InsideBoard, RuleIds.ThingsApart, RuleIds.PlugOverhang, RuleIds.KeepOuts, RuleIds.Rails, RuleIds.SwitchSpacing,
    ];

    /// <summary>The chain runs from right to left: three boxes side by side with their plugs touching need no lead at all.</summary>
    private static readonly RigProblemDraft Three = A.Draft(A.Board(500, 100))
        .With(A.Device("hall").WithAudioJacks().Doing("reverb"), A.Device("fuzz").WithAudioJacks().Doing("drive"), A.Device("echo").WithAudioJacks().Doing("delay"));

    [Fact]
    public async Task A_rig_that_stands_is_stood_with_shorter_leads_and_keeps_everything_else()
    {
        var rig = A.Rig().Placing("fuzz", 0, 0).Placing("echo", 200, 0).Placing("hall", 400, 0).Bringing("clip");

        var tidied = await Tidied(Three.With(A.OffBoard("clip")), rig);

        Assert.Equal(0.Mm, tidied.Score.Leads);
        Assert.Equal(["hall", "echo", "fuzz"], tidied.Rig.Placements.OrderBy(p => p.At.X).Select(p => p.Id.Value));
        Assert.Equal((rig.Chain, rig.OffBoard, rig.HookUp), (tidied.Rig.Chain, tidied.Rig.OffBoard, tidied.Rig.HookUp));
    }

    [Fact]
    public async Task The_musicians_own_chain_is_kept()
    {
        var rig = A.Rig().Placing("fuzz", 0, 0).Placing("echo", 200, 0).Placing("hall", 400, 0).Chained("hall echo fuzz");

        Assert.Equal(["fuzz", "echo", "hall"], (await Tidied(Three, rig)).Rig.Placements.OrderBy(p => p.At.X).Select(p => p.Id.Value));
    }

    [Fact]
    public async Task What_is_fixed_stays()
    {
        var tidied = await Tidied(Three.Fixing("hall", 399, 0), A.Rig().Placing("fuzz", 0, 0).Placing("echo", 150, 0).Placing("hall", 399, 0));

        Assert.Equal(399.Mm, tidied.Rig.Placements.Single(p => p.Id.Value == "hall").At.X);
    }

    [Fact]
    public async Task What_does_not_stand_is_stood_anew()
    {
        var tidied = await Tidied(Three, A.Rig().Placing("fuzz", 0, 0).Placing("echo", 10, 0).Placing("hall", 450, 0));

        Assert.Empty(RuleBook.Check(Three.Problem(), tidied.Rig));
    }

    [Fact]
    public async Task Two_placements_of_one_thing_become_one() =>
        Assert.Single((await Tidied(Three, A.Rig().Placing("fuzz", 0, 0).Placing("fuzz", 0, 0))).Rig.Placements);

    [Fact]
    public async Task Where_there_is_no_room_it_says_for_what()
    {
        var draft = Three with { Board = Three.Board with { Width = 350.Mm } };

        var none = Assert.IsType<TidyOutcome.NoRoom>(await Tidy(draft.Fixing("echo", 130, 0), A.Rig().Placing("fuzz", 0, 0).Placing("echo", 130, 0).Placing("hall", 250, 0)));

        Assert.Equal(["fuzz, echo and hall cannot all stand on board, which is 350 × 100 mm.", "echo is fixed at 130, 0 mm."], none.Conflict.Select(part => part.Sentence));
        // At 25.4 mm an inch.
        Assert.Equal(["fuzz, echo and hall cannot all stand on board, which is 13.78 × 3.94 in.", "echo is fixed at 5.12, 0 in."], none.Conflict.Select(part => part.Sentence.In(LengthUnit.Inches)));
    }

    [Fact]
    public Task It_mends_every_rule_about_places_breaks_none_and_takes_nothing_away() =>
        (from draft in Gen.OneOf(GenContest.Crowded, GenContest.AroundFixed, GenProblem.SmallDraft)
         let problem = draft.Problem()
         from rig in GenRig.For(problem)
         select (problem, rig)).SampleAsync(async (problem, rig) =>
        {
            if (await new RigPlanner().TidyAsync(problem, rig, cancel: TestContext.Current.CancellationToken) is not TidyOutcome.Tidied tidied)
                return;
            var before = RuleBook.Check(problem, rig).Select(v => v.RuleId).ToHashSet();
            var after = RuleBook.Check(problem, tidied.Rig).Select(v => v.RuleId).ToHashSet();

            Assert.DoesNotContain(after, OfPlaces.Contains);
            Assert.Subset(before, after);
            Assert.Equal(rig.Placements.Select(p => p.Id), tidied.Rig.Placements.Select(p => p.Id));
            Assert.Equal(Scorer.Score(problem, tidied.Rig), tidied.Score);
            if (!before.Overlaps(OfPlaces) && !before.Contains(RuleIds.SupplySpace) && OffTheirPlaces(rig) == OffTheirPlaces(tidied.Rig))
                Assert.InRange(tidied.Score.CompareTo(Scorer.Score(problem, rig)), 0, 1);

            // What is fixed goes back to its place whatever that costs; what is fixed and not in the rig stays out of it.
            int OffTheirPlaces(Rig one) => RuleBook.Check(problem, one).Count(v => v.RuleId == RuleIds.FixedPlaces);
        }, iter: 200);

    [Fact]
    public async Task Called_off_before_it_starts_it_gives_back_what_stands()
    {
        using var cancel = new CancellationTokenSource();
        await cancel.CancelAsync();
        var rig = A.Rig().Placing("fuzz", 0, 0).Placing("echo", 200, 0);

        Assert.Equal(rig, Assert.IsType<TidyOutcome.Tidied>(await new RigPlanner().TidyAsync(Three.Problem(), rig, cancel: cancel.Token)).Rig);
    }

    private static Task<TidyOutcome> Tidy(RigProblemDraft draft, Rig rig) => new RigPlanner().TidyAsync(draft.Problem(), rig, cancel: TestContext.Current.CancellationToken);

    private static async Task<TidyOutcome.Tidied> Tidied(RigProblemDraft draft, Rig rig) => Assert.IsType<TidyOutcome.Tidied>(await Tidy(draft, rig));
}
