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

        var ours = new TurningSearch(surface).Decide(shapes, 20_000, 20_000, Ask.Patiently);
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

    /// <summary>Nothing left over, however the cuts were made: the answer is known without a solver.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_board_cut_into_pieces_takes_them_all_back(int seed)
    {
        var random = new Random(seed);
        var pieces = Cut(random, 60, 40, random.Next(5, 12));

        var ours = new TurningSearch(Plain(60, 40)).Decide([.. pieces.Select(Bare)], 20_000, 20_000, Ask.Patiently);

        Assert.NotNull(ours);
        Assert.Equal(pieces.Count, ours.Count);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_pieces_grown_a_little_it_says_what_the_solver_says(int seed)
    {
        var random = new Random(seed);
        var pieces = Cut(random, 60, 40, random.Next(5, 10));

        // One is dropped or made smaller, and what that frees is mostly used up by making others longer.
        pieces[^1] = (Math.Max(1, pieces[^1].Width - random.Next(4)), Math.Max(1, pieces[^1].Depth - random.Next(4)));
        pieces[0] = (Math.Min(60, pieces[0].Width + random.Next(3)), pieces[0].Depth);
        pieces[1] = (pieces[1].Width, Math.Min(40, pieces[1].Depth + random.Next(3)));
        Shape[] shapes = [.. pieces.Select(Bare)];

        var ours = new TurningSearch(Plain(60, 40)).Decide(shapes, 20_000, 20_000, Ask.Patiently);
        var solvers = new ExactFit(Plain(60, 40), seed).Decide(shapes, Ask.Patiently, TimeSpan.FromSeconds(20));

        Assert.NotNull(solvers);
        Assert.NotNull(ours);
        Assert.Equal(solvers.Count, ours.Count);
    }

    /// <summary>More ways of turning than are gone through one by one, on a board that is the same over (odd seeds) and on one that is not.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_board_cut_into_many_pieces_takes_them_all_back_turned_as_they_may_be(int seed)
    {
        var random = new Random(seed);
        var depth = seed % 2 == 1 ? 40 : 30;
        var pieces = Cut(random, 40, depth, 9).Select(p => random.Next(2) == 0 ? p : (p.Depth, p.Width)).ToList();

        var ours = new TurningSearch(Plain(40, depth)).Decide([.. pieces.Select(p => Bare(p, Turn.None, Turn.Quarter))], 20_000, 20_000, Ask.Patiently);

        Assert.NotNull(ours);
        Assert.Equal(pieces.Count, ours.Count);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_many_pieces_that_may_be_turned_it_says_what_the_solver_says(int seed)
    {
        var random = new Random(seed);
        var depth = seed % 2 == 1 ? 40 : 30;
        var pieces = Cut(random, 40, depth, 9);
        pieces[0] = (Math.Min(40, pieces[0].Width + 1), pieces[0].Depth);
        pieces[^1] = (pieces[^1].Width, Math.Max(1, pieces[^1].Depth - 1 - (pieces[0].Depth / pieces[^1].Width)));
        Shape[] shapes = [.. pieces.Select(p => Bare(p, Turn.None, Turn.Quarter))];

        var ours = new TurningSearch(Plain(40, depth)).Decide(shapes, 20_000, 20_000, Ask.Patiently);
        var solvers = new ExactFit(Plain(40, depth), seed).Decide(shapes, Ask.Patiently, TimeSpan.FromSeconds(20));

        Assert.NotNull(solvers);
        Assert.NotNull(ours);
        Assert.Equal(solvers.Count, ours.Count);
    }

    private static Surface Plain(int width, int depth) => new(new Board(new("board"), "board", width.Mm, depth.Mm, 0.G, [], [], Overhang.Usual), switchSpacing: 0);

    private static Shape Bare((int Width, int Depth) size) => Bare(size, Turn.None);

    private static Shape Bare((int Width, int Depth) size, params Turn[] turns) =>
        Shapes.Of(new Device(new("box"), "box", new(size.Width.Mm, size.Depth.Mm, 1.Mm), 0.G, [.. turns], null, [], Bypass.True, [], []), PlugSizes.Usual);

    /// <summary>The largest piece is cut in two, one way or the other, until there are enough.</summary>
    private static List<(int Width, int Depth)> Cut(Random random, int width, int depth, int count)
    {
        List<(int Width, int Depth)> pieces = [(width, depth)];
        while (pieces.Count < count)
        {
            var one = pieces.MaxBy(p => p.Width * p.Depth);
            pieces.Remove(one);
            var isAlong = random.Next(2) == 0 ? one.Width > 1 : one.Depth <= 1;
            var at = 1 + random.Next((isAlong ? one.Width : one.Depth) - 1);
            pieces.AddRange(isAlong ? [(at, one.Depth), (one.Width - at, one.Depth)] : [(one.Width, at), (one.Width, one.Depth - at)]);
        }

        return pieces;
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
