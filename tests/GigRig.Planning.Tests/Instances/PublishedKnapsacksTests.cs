using GigRig.Domain.Rigs;
using GigRig.TestKit.Instances;
using Xunit;

namespace GigRig.Planning.Tests.Instances;

public sealed class PublishedKnapsacksTests
{
    public static TheoryData<PublishedKnapsack> All { get; } = new(PublishedKnapsacks.All);

    // Types and copies as tabulated with the instances by Beasley 1985 and the OR-Library notes on ngcutap, gcut and cgcut.
    [Theory]
    [InlineData("ngcut1", 5, 10)]
    [InlineData("ngcut2", 7, 17)]
    [InlineData("ngcut3", 10, 21)]
    [InlineData("ngcut4", 5, 7)]
    [InlineData("ngcut5", 7, 14)]
    [InlineData("ngcut6", 10, 15)]
    [InlineData("ngcut7", 5, 8)]
    [InlineData("ngcut8", 7, 13)]
    [InlineData("ngcut9", 10, 18)]
    [InlineData("ngcut10", 5, 13)]
    [InlineData("ngcut11", 7, 15)]
    [InlineData("ngcut12", 10, 22)]
    [InlineData("cgcut1", 7, 16)]
    [InlineData("cgcut2", 10, 23)]
    [InlineData("hccut3", 7, 7)]
    [InlineData("wang20", 19, 42)]
    [InlineData("okp1", 15, 50)]
    [InlineData("okp2", 30, 30)]
    [InlineData("okp3", 30, 30)]
    [InlineData("okp5", 29, 97)]
    public void An_oriented_instance_has_the_published_number_of_pieces(string name, int types, int copies)
    {
        var instance = PublishedKnapsacks.Oriented.Single(i => i.Name == name);

        Assert.Equal((types, copies), (instance.Pieces.Length, instance.Pieces.Sum(p => p[3])));
        Assert.Equal(copies, instance.ToProblem().Devices.Count);
    }

    [Fact]
    public void The_gcut_pieces_are_worth_their_area_and_come_once() =>
        Assert.All(PublishedKnapsacks.Gcut.SelectMany(i => i.Pieces), piece => Assert.Equal((piece[0] * piece[1], 1), (piece[2], piece[3])));

    [Theory]
    [MemberData(nameof(All))]
    public void The_optimum_is_at_most_what_area_alone_allows(PublishedKnapsack instance) =>
        Assert.InRange(instance.Optimum, instance.Pieces.Max(p => p[2]), BestByArea(instance));

    [Fact]
    public void Allowing_turns_never_makes_an_optimum_worse() =>
        Assert.All(PublishedKnapsacks.Turning, turning =>
        {
            var oriented = PublishedKnapsacks.Oriented.Single(i => i.Name == turning.Name);
            Assert.Equal(oriented.Pieces, turning.Pieces);
            Assert.InRange(turning.Optimum, oriented.Optimum, int.MaxValue);
        });

    [Theory]
    [MemberData(nameof(All))]
    public void It_makes_a_problem_that_makes_sense(PublishedKnapsack instance) =>
        Assert.IsType<ProblemCheck.Accepted>(RigProblem.Create(instance.ToProblem()));

    /// <summary>The one-dimensional knapsack over areas: no layout can be worth more.</summary>
    private static int BestByArea(PublishedKnapsack instance)
    {
        var best = new int[instance.Width * instance.Depth + 1];
        foreach (var piece in instance.Pieces.SelectMany(p => Enumerable.Repeat(p, p[3])))
        {
            var area = piece[0] * piece[1];
            for (var room = best.Length - 1; room >= area; room--)
                best[room] = Math.Max(best[room], best[room - area] + piece[2]);
        }

        return best[^1];
    }
}
