using GigRig.Benchmarks.Problems;
using GigRig.TestKit.Instances;

namespace GigRig.Planning.Tests.Benchmarks;

public sealed class PublishedProblemsTests
{
    [Fact]
    public void Without_a_name_there_are_all_knapsacks_and_packings_each_by_a_name_of_its_own() =>
        Assert.Equal(PublishedKnapsacks.All.Count() + PublishedPackings.All.Count, PublishedProblems.Matching([]).DistinctBy(p => p.Name).Count());

    [Theory]
    [InlineData("okp2", "okp2")]
    [InlineData("okp*", "okp1 okp2 okp3 okp5 okp2-turning")]
    [InlineData("nothing", "")]
    public void A_star_stands_for_anything(string pattern, string names) =>
        Assert.Equal(names, string.Join(' ', PublishedProblems.Matching([pattern]).Select(p => p.Name)));
}
