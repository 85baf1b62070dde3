namespace GigRig.Domain.Wiring;

/// <summary>
/// Gives each row a column of its own so that the costs add up to the least, exactly: the Hungarian method with shortest augmenting paths
/// (R. Jonker, A. Volgenant: A shortest augmenting path algorithm for dense and sparse linear assignment problems, Computing 38, 1987), rows² × columns steps.
/// </summary>
internal static class LeastCost
{
    // Row and column 0 stand for "none", so that an augmenting path has a place to begin.
    /// <param name="costs">Rows by columns, at least as many columns as rows. Sums must stay well within a <see cref="long"/>.</param>
    /// <returns>The column of each row.</returns>
    public static int[] Assign(long[,] costs)
    {
        var (rows, columns) = (costs.GetLength(0), costs.GetLength(1));
        if (columns < rows)
            throw new ArgumentException($"{rows} rows cannot each have one of {columns} columns.", nameof(costs));
        var (rowPrice, columnPrice, rowOf, before) = (new long[rows + 1], new long[columns + 1], new int[columns + 1], new int[columns + 1]);
        for (var row = 1; row <= rows; row++)
        {
            rowOf[0] = row;
            var last = FindFreeColumn();
            for (var column = last; column != 0; column = before[column])
                rowOf[column] = rowOf[before[column]];
        }

        var columnOf = new int[rows];
        for (var column = 1; column <= columns; column++)
            if (rowOf[column] != 0)
                columnOf[rowOf[column] - 1] = column - 1;
        return columnOf;

        int FindFreeColumn()
        {
            var (distance, seen) = (new long[columns + 1], new bool[columns + 1]);
            Array.Fill(distance, long.MaxValue);
            var at = 0;
            while (rowOf[at] != 0)
            {
                seen[at] = true;
                var (row, step, next) = (rowOf[at], long.MaxValue, 0);
                for (var column = 1; column <= columns; column++)
                {
                    if (seen[column])
                        continue;
                    var reduced = costs[row - 1, column - 1] - rowPrice[row] - columnPrice[column];
                    if (reduced < distance[column])
                        (distance[column], before[column]) = (reduced, at);
                    if (distance[column] < step)
                        (step, next) = (distance[column], column);
                }

                for (var column = 0; column <= columns; column++)
                    if (seen[column])
                        (rowPrice[rowOf[column]], columnPrice[column]) = (rowPrice[rowOf[column]] + step, columnPrice[column] - step);
                    else if (column > 0)
                        distance[column] -= step;
                at = next;
            }

            return at;
        }
    }
}
