using System.Numerics;
using GigRig.TestKit.Instances;
using Xunit;

namespace GigRig.Planning.Tests.Instances;

public sealed class PublishedRowsTests
{
    public static TheoryData<PublishedRow> All { get; } = new(PublishedRows.All);

    public static TheoryData<PublishedRow> Small { get; } = new(PublishedRows.All.Where(r => r.Lengths.Length <= 15));

    [Theory]
    [MemberData(nameof(All))]
    public void Flow_is_the_same_both_ways_and_none_to_oneself(PublishedRow row)
    {
        Assert.Equal(row.Lengths.Length, row.Flow.Length);
        for (var i = 0; i < row.Flow.Length; i++)
        {
            Assert.Equal(0, row.Flow[i][i]);
            Assert.Equal(row.Flow.Select(other => other[i]), row.Flow[i]);
        }
    }

    [Theory]
    [MemberData(nameof(Small))]
    public void The_optimum_is_what_trying_every_order_gives(PublishedRow row) =>
        Assert.Equal(row.Optimum, LeastByCuts(row));

    /// <summary>
    /// Every order at once, left to right: placing a thing next to the set before it costs its length times the flow passing over it,
    /// and half of each end's length times its own flow falls to the pairs themselves.
    /// </summary>
    private static decimal LeastByCuts(PublishedRow row)
    {
        var n = row.Lengths.Length;
        var least = new long[1 << n];
        for (var set = 1; set < least.Length; set++)
        {
            least[set] = long.MaxValue;
            for (var rest = set; rest != 0; rest &= rest - 1)
            {
                var last = BitOperations.TrailingZeroCount(rest);
                var before = set & ~(1 << last);
                least[set] = Math.Min(least[set], least[before] + (long)row.Lengths[last] * FlowAcross(row, before, ~set));
            }
        }

        var ends = Enumerable.Range(0, n).Sum(i => (decimal)row.Lengths[i] * row.Flow[i].Sum()) / 2;
        return least[^1] + ends;
    }

    private static long FlowAcross(PublishedRow row, int left, int right)
    {
        long flow = 0;
        for (var i = 0; i < row.Lengths.Length; i++)
            for (var j = 0; j < row.Lengths.Length; j++)
                if ((left >> i & 1) == 1 && (right >> j & 1) == 1)
                    flow += row.Flow[i][j];
        return flow;
    }
}
