using CsCheck;
using GigRig.Domain.Wiring;

namespace GigRig.Domain.Tests.Wiring;

public sealed class LeastCostTests
{
    // Counted out by hand: the six ways cost 6, 11, 5, 9, 7 and 6.
    [Fact]
    public void A_small_table_is_given_out_at_the_least() =>
        Assert.Equal([1, 0, 2], LeastCost.Assign(new long[,] { { 4, 1, 3 }, { 2, 0, 5 }, { 3, 2, 2 } }));

    [Fact]
    public void Nothing_to_give_out_is_given_out() => Assert.Empty(LeastCost.Assign(new long[0, 0]));

    [Fact]
    public void Too_few_columns_are_refused() =>
        Assert.Equal("2 rows cannot each have one of 1 columns. (Parameter 'costs')", Assert.Throws<ArgumentException>(() => LeastCost.Assign(new long[2, 1])).Message);

    [Fact]
    public void It_costs_as_little_as_the_best_of_all_ways() =>
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 3]).SelectMany((rows, more) => Gen.Long[-20, 40].Array2D[rows, rows + more]).Sample(costs =>
        {
            var columns = LeastCost.Assign(costs);

            Assert.Equal(columns.Length, columns.Distinct().Count());
            Assert.Equal(Cheapest(costs, 0, []), columns.Select((column, row) => costs[row, column]).Sum());
        });

    private static long Cheapest(long[,] costs, int row, HashSet<int> taken) => row == costs.GetLength(0)
        ? 0
        : Enumerable.Range(0, costs.GetLength(1)).Where(column => !taken.Contains(column)).Min(column => costs[row, column] + Cheapest(costs, row + 1, [.. taken, column]));
}
