using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;
using GigRig.Planning.Choosing;
using GigRig.Planning.Fitting;
using GigRig.TestKit.Building;

namespace GigRig.Planning.Tests.Choosing;

public sealed class RowBoundsTests
{
    private static readonly (int Width, int Depth)[] Boxes = [(42, 93), (60, 111), (71, 124), (84, 130), (120, 95)];

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 20)];

    /// <summary>Plugs are 15 mm long: a box with its jacks at the sides keeps so far from any neighbour on one side of it, boxes with theirs at the rear may touch.</summary>
    [Fact]
    public void Boxes_with_jacks_at_the_sides_are_charged_a_gap_each_and_those_with_jacks_at_the_rear_none()
    {
        var question = QuestionOf([Box("a", (71, 124), atSides: true), Box("b", (60, 111), atSides: true), Box("c", (84, 130), atSides: false), Box("d", (60, 124), atSides: false)]);

        var bounds = Of(question, new(question.Surface)).For(new Posture[4]);

        Assert.Equal(2, bounds.Length);
        Assert.Equal([71 + 15, 60 + 15, 84, 60], bounds[0].Weights);
        Assert.Equal(460, bounds[0].Most);
        Assert.Equal([71 + 15, 60 + 15], bounds[1].Weights[..2]);
        Assert.Equal(460 + 15, bounds[1].Most);
        Assert.All(bounds[1].Weights[2..], weight => Assert.True(weight > bounds[1].Most));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Whatever_stands_keeps_one_of_the_bounds(int seed)
    {
        var random = new Random(seed);
        var question = QuestionOf([.. Enumerable.Range(0, 16).Select(i => Box($"{i}", Boxes[random.Next(Boxes.Length)], random.Next(3) > 0, random.Next(3) == 0))]);
        var turning = new TurningSearch(question.Surface);
        var ways = new WaysToStand(question, turning);
        var row = Of(question, turning);
        var columns = new ColumnBounds(ways, question.Surface, turning.Following);
        var stood = 0;

        for (var times = 0; times < 60; times++)
        {
            int[] some = [.. Enumerable.Range(0, 16).OrderBy(_ => random.Next()).Take(random.Next(4, 8))];
            if (turning.Decide([.. some.Select(i => question.Candidates[i].Shape)], 5_000, 5_000, Ask.Patiently) is not { Count: > 0 } standings)
                continue;
            stood++;
            var postures = new Posture[16];
            foreach (var standing in standings)
                postures[some[standing.Item]] = IsInRow(standing) ? Posture.InRow : Posture.Otherwise;

            Assert.All([new Posture[16], postures], each => Assert.Contains(row.For(each), Holds));
            Assert.All([new Posture[16], postures], each => Assert.True(Holds(columns.For(each))));
            Assert.All(some.Where(i => postures[i] == Posture.Otherwise), i => Assert.True(Holds(row.Beside(i, postures))));

            bool IsInRow(Standing standing) => ways.Of(some[standing.Item], Posture.InRow).Any(way => question.Candidates[some[standing.Item]].Shape.PoseLike(way.Pose) == standing.Pose);
            bool Holds(Bound bound) => some.Sum(bound.Of) <= bound.Most;
        }

        Assert.NotEqual(0, stood);
    }

    private static RowBounds Of(Question question, TurningSearch turning) => new(new(question, turning), 460, turning.Following);

    private static Question QuestionOf(Device[] devices) => new(A.Draft(new(new("board"), "board", 460.Mm, 135.Mm, 0.G, [], [], Overhang.Usual)).With(devices).Problem());

    private static Device Box(string name, (int Width, int Depth) size, bool atSides, bool mayTurn = false) => new(
        new(name),
        name,
        new(size.Width.Mm, size.Depth.Mm, 50.Mm),
        0.G,
        mayTurn ? [Turn.None, Turn.Quarter] : [Turn.None],
        null,
        atSides
            ? [new(JackUse.In, Side.Right, (size.Depth / 2).Mm), new(JackUse.Out, Side.Left, (size.Depth / 2).Mm)]
            : [new(JackUse.In, Side.Rear, (size.Width - 9).Mm), new(JackUse.Out, Side.Rear, 9.Mm)],
        Bypass.True,
        [],
        []);
}
