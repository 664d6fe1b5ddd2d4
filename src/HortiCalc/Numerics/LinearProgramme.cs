namespace HortiCalc.Numerics;

/// <summary>
/// Finds the amounts, none below zero, that keep every sum between its limits at the least cost: the simplex method in two phases on a dense
/// table (G. B. Dantzig, Linear Programming and Extensions, Princeton, 1963), by the rule of R. G. Bland, New finite pivoting rules for the
/// simplex method, 1977, which never goes round in a circle.
/// </summary>
/// <remarks>
/// Meant for tens of unknowns and limits of like size: scale each row by what it should come to. First the sum of what is missing to the lower
/// limits is brought to zero, then the cost is lowered as far as it goes.
/// </remarks>
internal static class LinearProgramme
{
    private const double Tolerance = 1e-10;

    /// <param name="cost">The cost of one unit of each amount.</param>
    /// <param name="rows">What one unit of each amount gives to each sum.</param>
    /// <param name="low">The least of each sum, or negative infinity.</param>
    /// <param name="high">The most of each sum, or infinity.</param>
    /// <returns>The amounts, or <see langword="null"/> where none keep within the limits.</returns>
    /// <exception cref="InvalidOperationException">The cost has no least value: it falls without end.</exception>
    public static double[]? Minimise(double[] cost, double[,] rows, double[] low, double[] high)
    {
        List<(double[] Factors, double Right, int Slack)> limits = [];
        for (int i = 0; i < rows.GetLength(0); i++)
        {
            double[] row = [.. Enumerable.Range(0, cost.Length).Select(j => rows[i, j])];
            if (double.IsFinite(low[i]))
                limits.Add(Oriented(row, low[i], -1));
            if (double.IsFinite(high[i]))
                limits.Add(Oriented(row, high[i], 1));
        }

        Table table = new(cost.Length, limits);
        table.Run(table.CostOfTheMissing(), table.Columns);
        if (table.Missing() > 1e-9 * Math.Max(1, limits.Count))
            return null;
        table.DismissTheArtificial();
        double[] full = new double[table.Columns];
        cost.CopyTo(full, 0);
        return table.Run(full, table.Real) ? table.Amounts(cost.Length) : throw new InvalidOperationException("The cost falls without end.");
    }

    // The right side is made zero or more, so that the table can begin with every amount at zero.
    private static (double[] Factors, double Right, int Slack) Oriented(double[] row, double right, int slack) =>
        right >= 0 ? (row, right, slack) : ([.. row.Select(factor => -factor)], -right, -slack);

    private sealed class Table
    {
        private readonly double[,] cells;
        private readonly int[] basis;
        private readonly int height;

        public Table(int unknowns, List<(double[] Factors, double Right, int Slack)> limits)
        {
            height = limits.Count;
            Real = unknowns + height;
            Columns = Real + height;
            cells = new double[height, Columns + 1];
            basis = new int[height];
            for (int i = 0; i < height; i++)
            {
                for (int j = 0; j < unknowns; j++)
                    cells[i, j] = limits[i].Factors[j];
                cells[i, unknowns + i] = limits[i].Slack;
                cells[i, Real + i] = 1;
                cells[i, Columns] = limits[i].Right;
                basis[i] = limits[i].Slack > 0 ? unknowns + i : Real + i;
            }
        }

        /// <summary>The unknowns and the slacks; behind them stand the artificial amounts.</summary>
        public int Real { get; }

        public int Columns { get; }

        public double[] CostOfTheMissing() => [.. Enumerable.Range(0, Columns).Select(j => j < Real ? 0.0 : 1.0)];

        public double Missing() => Enumerable.Range(0, height).Where(i => basis[i] >= Real).Sum(i => cells[i, Columns]);

        public double[] Amounts(int unknowns)
        {
            double[] amounts = new double[unknowns];
            for (int i = 0; i < height; i++)
            {
                if (basis[i] < unknowns)
                    amounts[basis[i]] = Math.Max(0, cells[i, Columns]);
            }

            return amounts;
        }

        /// <summary>Lowers the cost as far as it goes, taking in only the first columns; false where it falls without end.</summary>
        public bool Run(double[] cost, int allowed)
        {
            while (true)
            {
                int entering = Enumerable.Range(0, allowed).FirstOrDefault(j => !basis.Contains(j) && Reduced(cost, j) < -Tolerance, -1);
                if (entering < 0)
                    return true;
                int leaving = -1;
                for (int i = 0; i < height; i++)
                {
                    if (cells[i, entering] <= Tolerance)
                        continue;
                    double difference = leaving < 0 ? -1 : cells[i, Columns] * cells[leaving, entering] - cells[leaving, Columns] * cells[i, entering];
                    if (difference < 0 || (difference == 0 && basis[i] < basis[leaving]))
                        leaving = i;
                }

                if (leaving < 0)
                    return false;
                Pivot(leaving, entering);
            }
        }

        /// <summary>Takes the artificial amounts, all zero now, out of the basis where another column can stand in.</summary>
        public void DismissTheArtificial()
        {
            for (int i = 0; i < height; i++)
            {
                if (basis[i] < Real)
                    continue;
                int other = Enumerable.Range(0, Real).FirstOrDefault(j => Math.Abs(cells[i, j]) > Tolerance && !basis.Contains(j), -1);
                if (other >= 0)
                    Pivot(i, other);
            }
        }

        private double Reduced(double[] cost, int column)
        {
            double reduced = cost[column];
            for (int i = 0; i < height; i++)
                reduced -= cost[basis[i]] * cells[i, column];
            return reduced;
        }

        private void Pivot(int row, int column)
        {
            double pivot = cells[row, column];
            for (int j = 0; j <= Columns; j++)
                cells[row, j] /= pivot;
            for (int i = 0; i < height; i++)
            {
                double factor = cells[i, column];
                if (i == row || factor == 0)
                    continue;
                for (int j = 0; j <= Columns; j++)
                    cells[i, j] -= factor * cells[row, j];
            }

            basis[row] = column;
        }
    }
}
