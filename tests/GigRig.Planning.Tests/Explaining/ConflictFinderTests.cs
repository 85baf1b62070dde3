using CsCheck;
using GigRig.Domain;
using GigRig.Domain.Events;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Planning.Explaining;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests.Explaining;

public sealed class ConflictFinderTests
{
    private const int Problems = 60;

    [Fact]
    public Task A_conflict_is_a_smallest_set_of_facts_that_cannot_hold_together() =>
        GenContest.Mixed.Select(AllMusts).SampleAsync(async draft =>
        {
            if (await Ask.Quietly(draft) is not PlanOutcome.Impossible)
                return;
            var conflict = (await Ask.Impossible(draft)).Conflict;
            var facts = Facts.Of(draft.Problem());
            var (inside, outside) = (facts.Where(f => IsIn(conflict, f)).ToList(), facts.Where(f => !IsIn(conflict, f)).ToList());
            var faults = Faults.Of(draft.Problem());
            if (faults.Count > 0)
            {
                // The supply cannot be mounted or what is fixed cannot stand, whatever else is lifted.
                Assert.All(conflict, part => Assert.True(part.RuleId == RuleIds.FixedPlaces || faults.Any(fault => fault.Sentence == part.Sentence)));
                return;
            }

            var alone = outside.Aggregate(draft, (lifted, fact) => fact.Lift(lifted));
            Assert.IsType<PlanOutcome.Impossible>(await Ask.Quietly(alone));
            foreach (var fact in inside)
                Assert.IsType<PlanOutcome.Proposed>(await Ask.Quietly(fact.Lift(alone)));
        }, iter: Problems);

    [Fact]
    public async Task Every_part_comes_from_a_rule_of_the_book()
    {
        var ids = RuleBook.Rules.Select(rule => rule.Id).ToHashSet();
        var everything = A.Draft(A.Board(200, 100).Bearing(1).Clearing(over: 1)).With(A.Device("echo").Doing("delay"), A.Device("hall"))
            .Needing("delay").Playing("wash", "delay").Limited(1, 0, 99).Pinning("echo").Banning("hall").SpacingSwitches(1);

        Assert.All(Facts.Of(everything.Problem()), fact => Assert.Contains(fact.RuleId, ids));
        Assert.NotEmpty((await Ask.Impossible(everything)).Conflict);
    }

    [Fact]
    public Task Two_musts_and_a_board_too_small_for_both() => AssertConflict(
        A.Draft(A.Board(150, 100)).With(A.Device("echo").Doing("delay"), A.Device("hall").Doing("reverb"), A.Device("fuzz").Doing("drive")).Needing("delay", "reverb").Wanting("drive"),
        "board is 150 × 100 mm.", "Reverb is a must.", "Delay is a must.");

    [Fact]
    public Task A_must_that_nothing_owned_does() => AssertConflict(
        A.Draft().With(A.Device("echo").Doing("delay")).Needing("delay", "tuner"),
        "Tuner is a must, and nothing that may come along does it.");

    [Fact]
    public Task No_supply_for_what_needs_one() => AssertConflict(
        A.Draft().With(A.Device("echo").Drawing(50).Doing("delay")).Needing("delay"),
        "There is no supply.", "Delay is a must.");

    [Fact]
    public Task Outlets_by_kind() => AssertConflict(
        A.Draft().With(A.Device("echo").Drawing(150).Doing("delay")).Needing("delay").FedBy(A.Outlet("1"), A.Outlet("2"), A.Outlet("3").AtVolts(9, 12).Giving(120)),
        "supply has 3 outlets: 2 × 9 V DC 100 mA, 1 × 9 V/12 V DC 120 mA.", "Delay is a must.");

    [Fact]
    public Task A_sound_of_two_channels() => AssertConflict(
        A.Draft().Through(A.Amp().WithChannels("clean", "drive")).Playing("both", "clean", "drive"),
        "The sound both (Clean sound + Drive, all on at once) is a must.");

    [Fact]
    public Task Too_heavy_a_pin() => AssertConflict(
        A.Draft().With(A.Device("brick").Weighing(4000)).Pinning("brick").Limited(mass: 5500),
        "No more than 5.5 kg may be carried.", "brick is pinned.");

    [Fact]
    public Task A_ban_that_takes_the_only_one() => AssertConflict(
        A.Draft().With(A.Device("echo").Doing("delay")).Needing("delay").Banning("echo"),
        "echo is banned.", "Delay is a must.");

    [Fact]
    public Task A_box_too_high_for_the_lid() => AssertConflict(
        A.Draft(A.Board().Clearing(over: 40)).With(A.Device("echo").Doing("delay")).Needing("delay"),
        "board has 40 mm up to its lid.", "Delay is a must.");

    private static async Task AssertConflict(RigProblemDraft draft, params string[] sentences) =>
        Assert.Equal(sentences, (await Ask.Impossible(draft)).Conflict.Select(part => part.Sentence.ToString()));

    private static bool IsIn(ValueList<ConflictPart> conflict, Fact fact) => conflict.Any(part => part.RuleId == fact.RuleId && part.Sentence == fact.Sentence);

    private static RigProblemDraft AllMusts(RigProblemDraft draft) =>
        draft with { Event = draft.Event with { Needs = draft.Event.Needs.Select(need => need with { Level = NeedLevel.Must }).ToValueList() } };
}
