using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.Web.Features.Plan;
using Xunit;

namespace GigRig.Web.Tests.Features.Plan;

public sealed class OutcomeWordsTests
{
    private static readonly Score Score = new(20, 7, 3, 12_340.G, 1250.Mm);

    [Fact]
    public void Proved_best_is_said_only_where_it_was_proved()
    {
        Assert.Equal("Proved best", OutcomeWords.TitleOf(Proposed(proven: true, bound: 20)));
        Assert.Equal("Best so far", OutcomeWords.TitleOf(Proposed(proven: false, bound: 20)));
    }

    [Fact]
    public void An_unproved_rig_says_how_much_more_there_could_be() =>
        Assert.Contains("up to 10 more in wants", OutcomeWords.SentenceOf(Proposed(proven: false, bound: 30)));

    [Fact]
    public void An_unproved_rig_that_covers_all_it_can_says_what_is_left_open() =>
        Assert.Contains("were not ruled out", OutcomeWords.SentenceOf(Proposed(proven: false, bound: 20)));

    [Fact]
    public void Impossible_and_undecided_are_never_mixed_up()
    {
        Assert.Equal("Proved impossible", OutcomeWords.TitleOf(new PlanOutcome.Impossible([new("musts-covered", [], "Delay is a must.")], [], TimeSpan.Zero)));
        Assert.Equal("Undecided", OutcomeWords.TitleOf(new PlanOutcome.Undecided(5, TimeSpan.Zero)));
    }

    private static PlanOutcome Proposed(bool proven, long bound) =>
        new PlanOutcome.Proposed(new(Rig.Empty, Score, new([], [])), proven, bound, [], [], TimeSpan.Zero);
}
