using CsCheck;
using GigRig.Planning.Fitting;

namespace GigRig.Planning.Tests.Fitting;

public sealed class RowRestTests
{
    private const int Count = 5;

    [Fact]
    public void The_rest_goes_onto_the_board_exactly_when_some_order_of_it_does() =>
        Gen.Select(Gen.Int[0, 9].Array[Count * Count], Gen.Int[1, 9].Array[Count], Gen.Int[0, 9].Array[Count], Gen.Int[5, 40], Gen.Int[0, 30]).Sample((between, widths, starts, width, put) =>
        {
            var distance = new int[Count, Count];
            for (var i = 0; i < Count; i++)
            {
                for (var j = 0; j < Count; j++)
                    distance[i, j] = between[(i * Count) + j];
            }

            var open = Enumerable.Range(0, Count).Where(i => (put >> i & 1) == 0).ToArray();
            var goes = Orders(open).Any(order => starts[order[0]] + order.Zip(order.Skip(1), (a, b) => distance[a, b]).Sum() + widths[order[^1]] <= width);

            Assert.Equal(goes, new RowRest([.. Enumerable.Range(0, Count)], distance, widths).Suffices(put, starts, width));
        });

    private static IEnumerable<int[]> Orders(int[] things) =>
        things.Length == 0 ? [[]] : things.SelectMany(first => Orders([.. things.Where(t => t != first)]).Select(rest => (int[])[first, .. rest]));
}
