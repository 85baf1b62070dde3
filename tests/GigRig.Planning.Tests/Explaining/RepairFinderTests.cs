using CsCheck;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Planning.Tests.Explaining;

public sealed class RepairFinderTests
{
    private const int Problems = 60;

    [Fact]
    public Task A_repair_brings_what_it_promises() =>
        GenContest.Mixed.SampleAsync(async draft =>
        {
            var outcome = await Ask.Planner(draft);
            var (repairs, wants) = outcome switch
            {
                PlanOutcome.Proposed proposed => (proposed.Repairs, proposed.Best.Score.Wants),
                PlanOutcome.Impossible impossible => (impossible.Repairs, -1),
                _ => throw new InvalidOperationException("Undecided on a small problem."),
            };
            foreach (var repair in repairs)
            {
                Assert.True(repair.Score.Wants > wants, repair.Sentence.ToString());
                var after = Assert.IsType<PlanOutcome.Proposed>(await Ask.Quietly(repair.Changed));
                Assert.Equal(0, after.Best.Score.CompareChoice(repair.Score));
            }
        }, iter: Problems);

    [Fact]
    public async Task A_board_wide_enough_is_offered_in_its_smallest_size()
    {
        var impossible = await Ask.Impossible(A.Draft(A.Board(130, 100)).With(A.Device("echo").Doing("delay"), A.Device("hall").Doing("reverb")).Needing("delay", "reverb"));

        var wider = Assert.Single(impossible.Repairs, r => r.Kind == "wider-board").Sentence;
        Assert.Equal("Take a board 100 mm wider than board. Then everything is covered.", wider);
        Assert.Equal("Take a board 3.94 in wider than board. Then everything is covered.", wider.In(LengthUnit.Inches));
    }

    [Fact]
    public async Task An_outlet_is_offered_where_that_is_all_it_takes()
    {
        var impossible = await Ask.Impossible(A.Draft().With(A.Device("echo").Drawing(50).Doing("delay")).Needing("delay"));

        Assert.Equal("Add an isolated 9 V outlet of 500 mA. Then everything is covered.", Assert.Single(impossible.Repairs, r => r.Kind == "one-more-outlet").Sentence);
    }

    [Fact]
    public async Task What_is_pinned_may_be_unpinned_and_what_is_banned_allowed()
    {
        var pinned = await Ask.Impossible(A.Draft().With(A.Device("brick").Weighing(4000)).Pinning("brick").Limited(mass: 5500));
        var banned = await Ask.Proposed(A.Draft().With(A.Device("echo").Doing("delay")).Wanting("delay").Banning("echo"));

        Assert.Contains("Unpin brick. Then everything is covered.", pinned.Repairs.Select(r => r.Sentence));
        Assert.Contains("Allow echo again. Then everything is covered.", banned.Repairs.Select(r => r.Sentence));
    }

    [Fact]
    public async Task Nothing_is_offered_where_everything_is_covered() =>
        Assert.Empty((await Ask.Proposed(A.Draft().With(A.Device("echo").Doing("delay")).Wanting("delay"))).Repairs);
}
