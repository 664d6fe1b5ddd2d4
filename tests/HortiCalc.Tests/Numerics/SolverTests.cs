using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Numerics;

namespace HortiCalc.Tests.Numerics;

/// <summary>Least squares without negative amounts, and linear programmes: the conditions that mark their optimum.</summary>
public class SolverTests
{
    [Fact]
    public void LeastSquares_WhereTheFreeSolutionIsNegative_StopsAtZero()
    {
        // Free: x = (-1, 2); held at zero the second falls to 1.5.
        double[] amounts = NonNegativeLeastSquares.Solve(new double[,] { { 1, 1 }, { 0, 1 } }, [1, 2]);

        Assert.Equal(0, amounts[0]);
        Assert.Equal(1.5, amounts[1], 1e-12);
    }

    [Fact]
    public void LeastSquares_ColumnsThatDependOnOneAnother_AreTakenCareOf()
    {
        double[] amounts = NonNegativeLeastSquares.Solve(new double[,] { { 1, 2, 1 }, { 2, 4, 0 } }, [3, 4]);

        Assert.Equal(3, amounts[0] + 2 * amounts[1] + amounts[2], 1e-9);
        Assert.Equal(4, 2 * amounts[0] + 4 * amounts[1], 1e-9);
    }

    [Fact]
    public void LeastSquares_NothingWanted_IsNothing() =>
        Assert.All(NonNegativeLeastSquares.Solve(new double[,] { { 1, 2 }, { 3, 4 } }, [0, 0]), amount => Assert.Equal(0, amount));

    [Property(MaxTest = 200)]
    public void LeastSquares_AnyProblem_MeetsTheConditionsOfTheOptimum(int seed)
    {
        Random random = new(seed);
        (int rows, int columns) = (random.Next(1, 7), random.Next(1, 7));
        (double[,] matrix, double[] target) = (new double[rows, columns], new double[rows]);
        for (int i = 0; i < rows; i++)
        {
            target[i] = random.NextDouble() * 4 - 1;
            for (int j = 0; j < columns; j++)
                matrix[i, j] = random.NextDouble() * 2 - 0.6;
        }

        double[] amounts = NonNegativeLeastSquares.Solve(matrix, target);
        for (int j = 0; j < columns; j++)
        {
            double gain = Enumerable.Range(0, rows).Sum(i =>
                matrix[i, j] * (target[i] - Enumerable.Range(0, columns).Sum(k => matrix[i, k] * amounts[k])));

            // No amount is negative, none at zero would gain by rising, none above it by a change.
            Assert.True(amounts[j] >= 0);
            Assert.True(gain <= 1e-7);
            Assert.True(amounts[j] <= 1e-9 || Math.Abs(gain) <= 1e-7);
        }
    }

    [Fact]
    public void Programme_OfTheTextbook_HasItsCorner()
    {
        // Most of 3x + 5y where x <= 4, 2y <= 12, 3x + 2y <= 18: 36 at (2, 6).
        double[] amounts = LinearProgramme.Minimise(
            [-3, -5], new double[,] { { 1, 0 }, { 0, 2 }, { 3, 2 } }, [double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity], [4, 12, 18])!;

        Assert.Equal(2, amounts[0], 1e-12);
        Assert.Equal(6, amounts[1], 1e-12);
    }

    [Fact]
    public void Programme_BealesCircle_IsLeft()
    {
        // The example of Beale, on which the usual choice of column goes round for ever: -0.05 at (1/25, 0, 1, 0).
        double[] amounts = LinearProgramme.Minimise(
            [-0.75, 150, -0.02, 6],
            new double[,] { { 0.25, -60, -0.04, 9 }, { 0.5, -90, -0.02, 3 }, { 0, 0, 1, 0 } },
            [double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity],
            [0, 0, 1])!;

        Assert.Equal(-0.05, -0.75 * amounts[0] + 150 * amounts[1] - 0.02 * amounts[2] + 6 * amounts[3], 1e-12);
    }

    [Fact]
    public void Programme_LimitsThatContradict_HaveNoSolution() =>
        Assert.Null(LinearProgramme.Minimise([1, 1], new double[,] { { 1, 1 }, { 1, 1 } }, [3, double.NegativeInfinity], [double.PositiveInfinity, 2]));

    [Fact]
    public void Programme_WithoutAnEnd_IsRefused() =>
        Assert.Throws<InvalidOperationException>(() => LinearProgramme.Minimise([-1], new double[,] { { 1 } }, [1], [double.PositiveInfinity]));

    [Fact]
    public void Programme_TheSameLimitTwice_IsNoHarm()
    {
        double[] amounts = LinearProgramme.Minimise([1, 2], new double[,] { { 1, 1 }, { 2, 2 } }, [3, 6], [3, 6])!;

        Assert.Equal(3, amounts[0], 1e-12);
        Assert.Equal(0, amounts[1], 1e-12);
    }

    [Property(MaxTest = 100)]
    public void Programme_TwoUnknowns_IsTheBestOfAllCorners(int seed)
    {
        Random random = new(seed);
        double[,] rows = new double[3, 2];
        double[] low = new double[3];
        double[] high = new double[3];
        for (int i = 0; i < 3; i++)
        {
            (rows[i, 0], rows[i, 1]) = (random.Next(1, 9), random.Next(0, 9));
            low[i] = random.Next(0, 9);
            high[i] = low[i] + random.Next(1, 20);
        }

        double[] cost = [random.Next(1, 9), random.Next(1, 9)];
        double[]? found = LinearProgramme.Minimise(cost, rows, low, high);
        double best = Corners(rows, low, high).Where(point => Inside(point, rows, low, high)).Select(point => cost[0] * point.X + cost[1] * point.Y).DefaultIfEmpty(double.NaN).Min();

        if (found is null)
            Assert.True(double.IsNaN(best));
        else
            Assert.Equal(best, cost[0] * found[0] + cost[1] * found[1], 1e-8);
    }

    private static IEnumerable<(double X, double Y)> Corners(double[,] rows, double[] low, double[] high)
    {
        List<(double A, double B, double C)> lines = [(1, 0, 0), (0, 1, 0)];
        for (int i = 0; i < 3; i++)
        {
            lines.Add((rows[i, 0], rows[i, 1], low[i]));
            lines.Add((rows[i, 0], rows[i, 1], high[i]));
        }

        foreach ((double A, double B, double C) first in lines)
        {
            foreach ((double A, double B, double C) second in lines)
            {
                double determinant = first.A * second.B - first.B * second.A;
                if (Math.Abs(determinant) > 1e-9)
                    yield return ((first.C * second.B - first.B * second.C) / determinant, (first.A * second.C - first.C * second.A) / determinant);
            }
        }
    }

    private static bool Inside((double X, double Y) point, double[,] rows, double[] low, double[] high) =>
        point.X >= -1e-9 && point.Y >= -1e-9 && Enumerable.Range(0, 3).All(i =>
            rows[i, 0] * point.X + rows[i, 1] * point.Y is double sum && sum >= low[i] - 1e-9 && sum <= high[i] + 1e-9);
}
