using CsCheck;
using GigRig.Domain.Geometry;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;

namespace GigRig.Domain.Tests.Wiring;

public sealed class RouteSearchTests
{
    private const int Side = 12;

    private static readonly Gen<Point> Place = Gen.Select(Gen.Int[0, Side], Gen.Int[0, Side], At);

    private static readonly Gen<Rect> Body = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9], Gen.Int[1, 5], Gen.Int[1, 5], (x, y, width, depth) => new Rect(x.Mm, y.Mm, width.Mm, depth.Mm));

    [Fact]
    public void Nothing_in_the_way_is_passed_with_one_corner_at_most()
    {
        Assert.Equal([At(0, 0), At(30, 0)], RouteSearch.Between(At(0, 0), At(30, 0), []).Corners);
        Assert.Equal((3, 50), (RouteSearch.Between(At(0, 0), At(30, 20), []).Corners.Count, RouteSearch.Between(At(0, 0), At(30, 20), []).Length.Value));
    }

    [Fact]
    public void Plugs_that_meet_tip_to_tip_are_both_ends_of_a_way_of_no_length() =>
        Assert.Equal([At(10, 10), At(10, 10)], RouteSearch.Between(At(10, 10), At(10, 10), [new(20.Mm, 0.Mm, 60.Mm, 50.Mm)]).Corners);

    [Fact]
    public void A_body_is_gone_around_on_its_nearer_side() =>
        Assert.Equal([At(0, 40), At(0, 50), At(100, 50), At(100, 40)], RouteSearch.Between(At(0, 40), At(100, 40), [new(20.Mm, 0.Mm, 60.Mm, 50.Mm)]).Corners);

    [Fact]
    public void Where_two_bodies_touch_a_lead_may_pass() =>
        Assert.Equal(100, RouteSearch.Between(At(50, 0), At(50, 100), [new(0.Mm, 20.Mm, 50.Mm, 50.Mm), new(50.Mm, 20.Mm, 50.Mm, 50.Mm)]).Length.Value);

    [Fact]
    public void A_jack_on_top_leads_over_its_own_body() =>
        Assert.Equal(80, RouteSearch.Between(At(50, 50), At(130, 50), [new(0.Mm, 0.Mm, 100.Mm, 100.Mm)]).Length.Value);

    [Fact]
    public void A_plug_shut_in_on_all_sides_leads_straight_through()
    {
        Rect[] ring = [new(0.Mm, 0.Mm, 30.Mm, 10.Mm), new(0.Mm, 20.Mm, 30.Mm, 10.Mm), new(0.Mm, 5.Mm, 10.Mm, 20.Mm), new(20.Mm, 5.Mm, 10.Mm, 20.Mm)];

        Assert.Equal([At(15, 15), At(60, 15), At(60, 0)], RouteSearch.Between(At(15, 15), At(60, 0), ring).Corners);
    }

    /// <summary>Against a flood of the millimetre grid, which knows no lines and no estimates.</summary>
    [Fact]
    public void No_way_along_the_millimetres_is_shorter() =>
        Gen.Select(Place, Place, Body.Array[0, 5]).Where((from, to, bodies) => !bodies.Any(body => Within(body, from) || Within(body, to))).Sample((from, to, bodies) =>
        {
            var route = RouteSearch.Between(from, to, bodies);

            Assert.Equal((from, to), (route.Corners[0], route.Corners[^1]));
            if (Flood(from, to, bodies) is { } shortest)
                Assert.Equal(shortest, route.Length.Value);
            else
                Assert.Equal(Math.Abs(from.X.Value - to.X.Value) + Math.Abs(from.Y.Value - to.Y.Value), route.Length.Value);
        });

    private static Point At(int x, int y) => new(x.Mm, y.Mm);

    private static bool Within(Rect body, Point point) => point.X > body.X && point.X < body.Right && point.Y > body.Y && point.Y < body.Rear;

    private static int? Flood(Point from, Point to, Rect[] bodies)
    {
        var (seen, queue) = (new Dictionary<(int, int), int>(), new Queue<(int X, int Y)>());
        Visit((from.X.Value, from.Y.Value), 0);
        while (queue.TryDequeue(out var at))
            foreach (var next in new[] { (at.X + 1, at.Y), (at.X - 1, at.Y), (at.X, at.Y + 1), (at.X, at.Y - 1) })
                if (next.Item1 is >= -1 and <= 20 && next.Item2 is >= -1 and <= 20 && !bodies.Any(body => Cuts(body, at, next)))
                    Visit(next, seen[at] + 1);
        return seen.TryGetValue((to.X.Value, to.Y.Value), out var steps) ? steps : null;

        void Visit((int, int) node, int count)
        {
            if (seen.TryAdd(node, count))
                queue.Enqueue(node);
        }
    }

    /// <summary>Whether the middle of a step of one millimetre lies within the body; in halves, to stay with whole numbers.</summary>
    private static bool Cuts(Rect body, (int X, int Y) a, (int X, int Y) b)
    {
        var (x, y) = (a.X + b.X, a.Y + b.Y);
        return x > 2 * body.X.Value && x < 2 * body.Right.Value && y > 2 * body.Y.Value && y < 2 * body.Rear.Value;
    }
}
