using GigRig.Benchmarks.Generating;
using GigRig.Domain.Documents;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;

namespace GigRig.Planning.Tests.Benchmarks;

public sealed class LibraryGeneratorTests
{
    [Fact]
    public void The_same_seed_gives_the_same_file_and_another_seed_another() =>
        Assert.Multiple(
            () => Assert.Equal(File(seed: 5), File(seed: 5)),
            () => Assert.NotEqual(File(seed: 5), File(seed: 6)));

    [Fact]
    public void A_file_reads_back_as_the_same_question()
    {
        var draft = new LibraryGenerator(7).Make(60, 600, 320);

        var read = Assert.IsType<ProblemCheck.Accepted>(RigProblemJson.Read(RigProblemJson.Write(draft)));

        Assert.Equal(draft, read.Problem.Draft);
    }

    [Theory]
    [InlineData(1, 460, 135)]
    [InlineData(24, 460, 135)]
    [InlineData(60, 600, 320)]
    [InlineData(300, 800, 400)]
    public void Every_library_makes_sense(int devices, int width, int depth)
    {
        for (var seed = 0; seed < 30; seed++)
        {
            var accepted = Assert.IsType<ProblemCheck.Accepted>(RigProblem.Create(new LibraryGenerator(seed).Make(devices, width, depth)));
            Assert.Equal(devices, accepted.Problem.Devices.Count);
        }
    }

    [Fact]
    public void About_two_thirds_of_the_boxes_have_their_audio_jacks_at_the_sides()
    {
        var devices = new LibraryGenerator(3).Make(1000, 600, 320).Devices;

        Assert.InRange(devices.Count(d => d.Jacks.Any(j => j.Side is Side.Left or Side.Right)), 600, 730);
    }

    private static string File(int seed) => RigProblemJson.Write(new LibraryGenerator(seed).Make(24, 460, 135));
}
