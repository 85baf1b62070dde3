using System.Globalization;
using GigRig.Domain.Rigs;
using GigRig.TestKit.Instances;
using Xunit;

namespace GigRig.Planning.Tests.Instances;

/// <summary>The paper's names tell what is in an instance: E, per cent of the plate left free, F(easible), N(ot) or X, number of pieces.</summary>
public sealed class PublishedPackingsTests
{
    public static TheoryData<PublishedPacking> All { get; } = new(PublishedPackings.All);

    [Fact]
    public void There_are_twenty_of_both_kinds()
    {
        Assert.Equal(20, PublishedPackings.All.Count);
        Assert.Equal(10, PublishedPackings.All.Count(i => i.Feasible));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_number_of_pieces_is_the_one_in_its_name(PublishedPacking instance)
    {
        Assert.Equal(Number(instance.Name[4..]), instance.Pieces.Sum(p => p[2]));
        Assert.Equal(Number(instance.Name[4..]), instance.ToProblem().Devices.Count);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_share_left_free_is_within_one_per_cent_of_its_name(PublishedPacking instance)
    {
        var plate = instance.Width * instance.Depth;
        var free = 100m * (plate - instance.Pieces.Sum(p => p[0] * p[1] * p[2])) / plate;

        // E04N17 and E07N15 are a whole per cent fuller than their names say, in every copy that is around.
        var named = Number(instance.Name[1..3]);
        Assert.InRange(free, Math.Max(0, named - 1), named);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_answer_agrees_with_its_name(PublishedPacking instance) =>
        Assert.True(instance.Name[3] == 'X' || instance.Feasible == (instance.Name[3] == 'F'), instance.Name);

    [Theory]
    [MemberData(nameof(All))]
    public void It_makes_a_problem_that_makes_sense(PublishedPacking instance) =>
        Assert.IsType<ProblemCheck.Accepted>(RigProblem.Create(instance.ToProblem()));

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
