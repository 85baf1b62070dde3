using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Building;
using GigRig.Web.Sheets;
using Xunit;

namespace GigRig.Web.Tests.Sheets;

public sealed class ScoreWordsTests
{
    private static readonly RigProblem Problem = A.Draft().Wanting("delay", 20).Wanting("reverb", 10).Problem();

    private static readonly Score Score = new(20, 7, 3, 12_340.G, 1250.Mm);

    [Fact]
    public void The_figures_name_every_tier_with_its_unit() =>
        Assert.Equal(
            [("Wants covered", "20 of 30"), ("Ratings", "7"), ("On the board", "3 boxes"), ("Carried", "12.3 kg"), ("Patch lead", "1250 mm")],
            ScoreWords.Figures(Problem, Score));

    [Fact]
    public void Progress_tells_the_best_so_far_and_the_most_there_can_be() =>
        Assert.Equal(
            "Best so far covers 20 in wants; at most 30 can be covered.",
            ScoreWords.ProgressOf(Problem, new(new(Rig.Empty, Score, new([], [])), 30, TimeSpan.Zero)));
}
