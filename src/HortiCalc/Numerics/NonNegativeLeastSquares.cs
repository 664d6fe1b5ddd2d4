using MathNet.Numerics.LinearAlgebra;

namespace HortiCalc.Numerics;

/// <summary>
/// Finds the amounts, none below zero, whose sum comes nearest to a target: algorithm NNLS of C. L. Lawson and R. J. Hanson, Solving Least
/// Squares Problems, Prentice-Hall, 1974, chapter 23.
/// </summary>
/// <remarks>
/// The amounts that are free to be above zero form the passive set; one by one that amount joins it whose rise would lessen the error most, and
/// one that would fall below zero leaves it. It ends after finitely many steps, because the error falls with each.
/// </remarks>
internal static class NonNegativeLeastSquares
{
    /// <summary>
    /// The least gain, in proportion to the lengths of its column and of the target, for which an amount is still raised: a few roundings. Each column has its
    /// own bound, so that light rows are fitted beside heavy ones.
    /// </summary>
    private const double Relative = 2e-15;

    /// <param name="matrix">What one unit of each column gives to each row.</param>
    /// <param name="target">What each row should come to.</param>
    /// <returns>One amount for each column.</returns>
    public static double[] Solve(double[,] matrix, double[] target)
    {
        Matrix<double> columns = Matrix<double>.Build.DenseOfArray(matrix);
        Vector<double> wanted = Vector<double>.Build.DenseOfArray(target);
        int count = columns.ColumnCount;
        double[] amounts = new double[count];
        bool[] passive = new bool[count];
        bool[] barred = new bool[count];
        double[] tolerances = [.. Enumerable.Range(0, count).Select(j => Relative * Math.Max(columns.Column(j).L2Norm() * wanted.L2Norm(), double.Epsilon))];

        // Lawson and Hanson bound the steps by three times the columns in practice; a bound of our own stops a stalling by rounding.
        for (int step = 0; step < 100 * (count + 1); step++)
        {
            Vector<double> gain = columns.TransposeThisAndMultiply(wanted - columns * Vector<double>.Build.DenseOfArray(amounts));
            int best = -1;
            for (int j = 0; j < count; j++)
            {
                if (!passive[j] && !barred[j] && gain[j] > tolerances[j] && (best < 0 || gain[j] > gain[best]))
                    best = j;
            }

            if (best < 0)
                break;
            passive[best] = true;
            double[] free = Unconstrained(columns, wanted, passive);
            if (free[best] <= 0)
            {
                // Rounding alone made it look worth while: it depends on those that are free already.
                passive[best] = false;
                barred[best] = true;
                continue;
            }

            Array.Clear(barred);
            while (Step(amounts, free, passive) is false)
                free = Unconstrained(columns, wanted, passive);
        }

        return amounts;
    }

    /// <summary>Goes towards the free solution as far as none falls below zero; whether it was reached.</summary>
    private static bool Step(double[] amounts, double[] free, bool[] passive)
    {
        double share = 1;
        for (int j = 0; j < amounts.Length; j++)
        {
            if (passive[j] && free[j] <= 0)
                share = Math.Min(share, amounts[j] / (amounts[j] - free[j]));
        }

        bool reached = true;
        for (int j = 0; j < amounts.Length; j++)
        {
            if (!passive[j])
                continue;
            bool stopped = free[j] <= 0 && amounts[j] / (amounts[j] - free[j]) <= share;
            amounts[j] = stopped ? 0 : amounts[j] + share * (free[j] - amounts[j]);
            if (free[j] <= 0)
                reached = false;
            if (stopped || amounts[j] <= 0)
            {
                amounts[j] = 0;
                passive[j] = false;
            }
        }

        return reached;
    }

    private static double[] Unconstrained(Matrix<double> columns, Vector<double> wanted, bool[] passive)
    {
        int[] chosen = [.. Enumerable.Range(0, passive.Length).Where(j => passive[j])];
        double[] result = new double[passive.Length];
        if (chosen.Length == 0)
            return result;

        // By singular values, so that columns which depend on one another do no harm.
        Matrix<double> part = Matrix<double>.Build.DenseOfColumns(columns.RowCount, chosen.Length, chosen.Select(j => (IEnumerable<double>)columns.Column(j)));
        Vector<double> solution = LeastSquares(part, wanted);
        for (int i = 0; i < chosen.Length; i++)
            result[chosen[i]] = solution[i];
        return result;
    }

    private static Vector<double> LeastSquares(Matrix<double> part, Vector<double> wanted)
    {
        MathNet.Numerics.LinearAlgebra.Factorization.Svd<double> factors = part.Svd();
        Vector<double> turned = factors.U.TransposeThisAndMultiply(wanted);
        double least = factors.S[0] * 1e-13;
        Vector<double> scaled = Vector<double>.Build.Dense(part.ColumnCount);
        for (int i = 0; i < factors.S.Count; i++)
            scaled[i] = factors.S[i] > least ? turned[i] / factors.S[i] : 0;
        return factors.VT.TransposeThisAndMultiply(scaled);
    }
}
