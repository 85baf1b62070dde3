using CsCheck;
using GigRig.Planning.Arranging;
using GigRig.TestKit.Instances;

namespace GigRig.Planning.Tests.Arranging;

public sealed class RowOrderTests
{
    public static TheoryData<PublishedRow> Published { get; } = new(PublishedRows.All);

    private static readonly Gen<(RowWay[][] Things, RowLink[] Links, int[] Gaps)> Small =
        from count in Gen.Int[1, 5]
        from things in Gen.Select(Gen.Int[1, 9], Gen.Int[-2, 11], Gen.Int[-2, 11], (width, leaves, arrives) => new RowWay(width, leaves, arrives)).Array[1, 2].Array[count]
        from links in Gen.Select(Gen.Int[0, count - 1], Gen.Int[0, count - 1], Gen.Int[1, 3], (here, there, times) => new RowLink(here, there, times)).Array[0, 6]
        from gaps in Gen.Int[0, 5].Array[7]
        select (things, links.Where(l => l.From != l.To).ToArray(), gaps);

    /// <summary>Distances there are between centres, and a centre may lie on half a millimetre: everything is doubled.</summary>
    [Theory]
    [MemberData(nameof(Published))]
    public void It_reaches_the_published_optimum(PublishedRow row)
    {
        RowWay[][] things = [.. row.Lengths.Select(length => new[] { new RowWay(2 * length, length, length) })];
        var links = from a in Enumerable.Range(0, row.Lengths.Length) from b in Enumerable.Range(0, a) select new RowLink(a, b, row.Flow[a][b]);

        var found = RowOrder.Best(things, [.. links], null, Ask.Patiently)!.Value;

        Assert.Equal(row.Optimum, found.Length / 2m);
        Assert.Equal(found.Length, LengthOf(found.Order, things, [.. links], (_, _, _, _) => 0));
    }

    [Fact]
    public void It_is_as_good_as_the_best_of_all_orders_and_ways() =>
        Small.Sample((things, links, gaps) =>
        {
            var found = RowOrder.Best(things, links, Gap, Ask.Patiently)!.Value;

            Assert.Equal(EveryOrder(things).Min(order => LengthOf(order, things, links, Gap)), found.Length);
            Assert.Equal(found.Length, LengthOf(found.Order, things, links, Gap));

            int Gap(int a, int p, int b, int q) => gaps[((a * 5) + (p * 3) + (b * 2) + q) % gaps.Length];
        }, iter: 500);

    [Fact]
    public void A_row_too_long_to_be_looked_through_is_left_alone() =>
        Assert.Null(RowOrder.Best([.. Enumerable.Repeat(new[] { new RowWay(1, 0, 0) }, 21)], [], null, Ask.Patiently));

    /// <summary>Thing by thing from the left, each lead from end to end; negative where an end lies beyond the other's.</summary>
    private static long LengthOf(IReadOnlyList<(int Thing, int Way)> order, RowWay[][] things, RowLink[] links, Func<int, int, int, int, int> gap)
    {
        var at = new Dictionary<int, (int X, RowWay Way, int Place)>();
        var x = 0;
        for (var place = 0; place < order.Count; place++)
        {
            var (thing, way) = order[place];
            if (place > 0)
                x += gap(order[place - 1].Thing, order[place - 1].Way, thing, way);
            at[thing] = (x, things[thing][way], place);
            x += things[thing][way].Width;
        }

        return links.Sum(link =>
        {
            var (from, to) = (at[link.From], at[link.To]);
            return (long)link.Times * Math.Sign(to.Place - from.Place) * (to.X + to.Way.In - from.X - from.Way.Out);
        });
    }

    private static IEnumerable<List<(int Thing, int Way)>> EveryOrder(RowWay[][] things, List<(int Thing, int Way)>? begun = null)
    {
        begun ??= [];
        if (begun.Count == things.Length)
            return [begun];
        return
            from thing in Enumerable.Range(0, things.Length)
            where begun.All(b => b.Thing != thing)
            from way in Enumerable.Range(0, things[thing].Length)
            from order in EveryOrder(things, [.. begun, (thing, way)])
            select order;
    }
}
