using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Units;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Tests.Fitting;

/// <summary>Boxes of common measures, a few more than a shallow board may hold: where a proof is wanted most.</summary>
public sealed class TurningSearchTests
{
    private static readonly (int Width, int Depth)[] Boxes = [(42, 93), (60, 111), (71, 124), (84, 130), (120, 95)];

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 30)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void It_says_what_the_solver_says(int seed)
    {
        var random = new Random(seed);
        var surface = new Surface(new Board(new("board"), "board", 460.Mm, 135.Mm, 0.G, [], [], Overhang.Usual), switchSpacing: 0);
        Shape[] shapes = [.. Enumerable.Range(0, random.Next(6, 9)).Select(i => Shapes.Of(Box(random, i), PlugSizes.Usual))];

        var ours = new TurningSearch(surface).Decide(shapes, 20_000, Ask.Patiently);
        var solvers = new ExactFit(surface, seed).Decide(shapes, Ask.Patiently, TimeSpan.FromSeconds(20));

        Assert.NotNull(ours);
        Assert.NotNull(solvers);
        Assert.Equal(solvers.Count, ours.Count);
        var layout = new Layout(surface, shapes);
        foreach (var standing in ours)
        {
            Assert.True(layout.Admits(shapes[standing.Item].Poses[standing.Pose], standing.X, standing.Y));
            layout.Stand(standing.Item, standing.Pose, standing.X, standing.Y);
        }
    }

    private static Device Box(Random random, int index)
    {
        var (width, depth) = Boxes[random.Next(Boxes.Length)];
        return new(
            new($"box{index}"),
            "box",
            new(width.Mm, depth.Mm, 50.Mm),
            0.G,
            random.Next(3) == 0 ? [Turn.None, Turn.Quarter] : [Turn.None],
            null,
            random.Next(3) == 0
                ? [new(JackUse.In, Side.Rear, (width - 9).Mm), new(JackUse.Out, Side.Rear, 9.Mm)]
                : [new(JackUse.In, Side.Right, (depth / 2).Mm), new(JackUse.Out, Side.Left, (depth / 2).Mm)],
            Bypass.True,
            [],
            []);
    }
}
