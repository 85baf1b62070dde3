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
    private static readonly (int Width, int Depth)[] Boxes = [(42, 93), (41, 90), (60, 111), (71, 124), (84, 130), (120, 95)];

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 20)];

    /// <summary>Plugs are 15 mm long: a box with its jacks at the sides keeps so far from any neighbour on one side of it, boxes with theirs at the rear may touch.</summary>
    [Fact]
    public void Boxes_with_jacks_at_the_sides_are_charged_a_gap_each_and_those_with_jacks_at_the_rear_none()
    {
        var question = QuestionOf([Box("a", (71, 124), atSides: true), Box("b", (60, 111), atSides: true), Box("c", (84, 130), atSides: false), Box("d", (60, 124), atSides: false)]);

        var bounds = Of(question, new(question.Surface)).For(Anyhow(4));

        Assert.Equal(2, bounds.Length);
        Assert.Equal([71 + 15, 60 + 15, 84, 60], bounds[0].Weights);
        Assert.Equal(460, bounds[0].Most);
        Assert.Equal([71 + 15, 60 + 15], bounds[1].Weights[..2]);
        Assert.Equal(460 + 15, bounds[1].Most);
        Assert.All(bounds[1].Weights[2..], weight => Assert.True(weight > bounds[1].Most));
    }

    /// <summary>
    /// With its jacks 36 mm from the front, a box 91 deep at the front of a board 135 deep has its plugs in front of a neighbour 90 deep that stands at the rear; where that has its own
    /// jacks 60 mm from the front, they pass behind the first. So there is no gap between these two; without the one, all others keep theirs.
    /// </summary>
    [Fact]
    public void A_box_whose_plugs_pass_others_is_decided_first_and_takes_no_gap_from_the_rest()
    {
        Device[] boxes = [.. Enumerable.Range(70, 6).Select(width => Box($"{width}", (width, 124), atSides: true)), Box("b", (44, 90), 60), Box("c", (43, 90), 60), Box("e", (40, 91), 36)];
        var question = QuestionOf(boxes);
        var row = Of(question, new(question.Surface));
        long[] rest = [.. Enumerable.Range(70, 6).Select(width => width + 15L), 44 + 15, 43 + 15];

        Assert.Equal([8], row.Lenient);

        Posture[] without = [.. Enumerable.Repeat(Posture.InRow, 8), Posture.AtHome];
        var bound = Assert.Single(row.For(without));
        Assert.Equal(rest, bound.Weights[..8]);
        Assert.True(bound.Of(8) > bound.Most);

        // It may stand next to one that keeps nothing from it and is counted with its gap nevertheless.
        Assert.Equal([.. rest, 40 - 15], Assert.Single(row.For(Anyhow(9))).Weights);
    }

    /// <summary>Turned, a box of 60 × 111 is 111 wide and leaves no room for anything of the row behind it: it takes its width of the row, less the gap of a neighbour.</summary>
    [Fact]
    public void A_turned_box_with_no_room_behind_it_takes_its_width_of_the_row()
    {
        var question = QuestionOf([Box("a", (71, 124), atSides: true), Box("b", (60, 111), atSides: true, mayTurn: true), Box("c", (42, 93), atSides: false, mayTurn: true)]);

        var bounds = Of(question, new(question.Surface)).For([Posture.InRow, Posture.Otherwise, Posture.Otherwise]);

        Assert.All(bounds, bound => Assert.Equal(111 - 15, bound.Of(1)));
        Assert.All(bounds, bound => Assert.Equal(0, bound.Of(2)));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Whatever_stands_keeps_one_of_the_bounds(int seed)
    {
        var random = new Random(seed);
        var question = QuestionOf([.. Enumerable.Range(0, 16).Select(i => Random($"{i}", random))]);
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
            var postures = Anyhow(16);
            foreach (var lenient in row.Lenient)
                postures[lenient] = Posture.AtHome;
            foreach (var standing in standings)
                postures[some[standing.Item]] = PostureOf(standing);

            Assert.All([Anyhow(16), postures], each => Assert.Contains(row.For(each), Holds));
            Assert.All([Anyhow(16), postures], each => Assert.True(Holds(columns.For(each))));
            Assert.All(some.Where(i => postures[i] != Posture.InRow), i => Assert.Contains(row.Beside(i, postures), Holds));

            Posture PostureOf(Standing standing) => new[] { Posture.InRow, Posture.Otherwise }.Single(posture => ways.Of(some[standing.Item], posture)
                .Any(way => question.Candidates[some[standing.Item]].Shape.PoseLike(way.Pose) == standing.Pose));
            bool Holds(Bound bound) => some.Sum(bound.Of) <= bound.Most;
        }

        Assert.NotEqual(0, stood);
    }

    private static Posture[] Anyhow(int things) => [.. Enumerable.Repeat(Posture.Any, things)];

    private static RowBounds Of(Question question, TurningSearch turning) => new(new(question, turning), question.Surface, turning.Following);

    private static Question QuestionOf(Device[] devices) => new(A.Draft(new(new("board"), "board", 460.Mm, 135.Mm, 0.G, [], [], Overhang.Usual)).With(devices).Problem());

    private static Device Random(string name, Random random)
    {
        var size = Boxes[random.Next(Boxes.Length)];
        return random.Next(3) > 0 ? Box(name, size, random.Next(30, size.Depth - 12), random.Next(3) == 0) : Box(name, size, atSides: false, random.Next(3) == 0);
    }

    private static Device Box(string name, (int Width, int Depth) size, bool atSides, bool mayTurn = false) => Box(name, size, atSides ? size.Depth / 2 : null, mayTurn);

    /// <param name="at">How far from the front its jacks are, at the sides; null: at the rear.</param>
    private static Device Box(string name, (int Width, int Depth) size, int? at, bool mayTurn = false) => new(
        new(name),
        name,
        new(size.Width.Mm, size.Depth.Mm, 50.Mm),
        0.G,
        mayTurn ? [Turn.None, Turn.Quarter] : [Turn.None],
        null,
        at is { } fromFront
            ? [new(JackUse.In, Side.Right, fromFront.Mm), new(JackUse.Out, Side.Left, fromFront.Mm)]
            : [new(JackUse.In, Side.Rear, (size.Width - 9).Mm), new(JackUse.Out, Side.Rear, 9.Mm)],
        Bypass.True,
        [],
        []);
}
