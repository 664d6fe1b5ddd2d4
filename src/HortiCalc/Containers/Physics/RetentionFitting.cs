using HortiCalc.Units;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>Least squares for retention curves.</summary>
internal static class RetentionFitting
{
    /// <summary>
    /// The parameters that the optimiser sees are free of bounds: shares by the logarithm of their odds, the rest by their logarithm, so that no step leaves what a
    /// curve can be.
    /// </summary>
    public static RetentionFit Fit(
        IReadOnlyList<RetentionPoint> points,
        Ratio? residual,
        string[] names,
        Func<Ratio, Ratio, double[], RetentionCurve> make,
        Func<double[], double[]> shown,
        double[][] beginnings)
    {
        Guard.NotNull(points);
        int unknowns = names.Length + (residual is null ? 1 : 0);
        if (points.Count <= unknowns || points.Select(point => Boundary.Metres(point.Suction)).Distinct().Count() < unknowns)
        {
            throw new ArgumentException(
                $"points has {Guard.Number(points.Count)} points at {Guard.Number(points.Select(point => point.Suction).Distinct().Count())} suctions; "
                + $"allowed: more than {Guard.Number(unknowns)} points, at {Guard.Number(unknowns)} different suctions or more.",
                nameof(points));
        }

        double[] suctions = [.. points.Select(point => Boundary.Metres(point.Suction))];
        double[] waters = [.. points.Select(point => Boundary.Fraction(point.Water))];
        double? fixedResidual = residual is { } known
            ? Guard.Within(Boundary.Fraction(known) * 100, 0, 100 * waters.Min(), "%", nameof(residual)) / 100
            : null;

        RetentionCurve Curve(double[] natural) => make(
            Ratio.FromPercent(100 * (fixedResidual ?? natural[^1])), Ratio.FromPercent(100 * natural[0]), shown(natural[1..3]));
        double Error(double[] natural) => Try(natural) is { } curve
            ? suctions.Select((suction, i) => Math.Pow(curve.WaterFraction(suction) - waters[i], 2)).Sum()
            : double.PositiveInfinity;
        RetentionCurve? Try(double[] natural)
        {
            try
            {
                return Curve(natural);
            }
            catch (ArgumentException)
            {
                // A step beyond what a curve can be; the optimiser is told by an error without end.
                return null;
            }
        }

        double[]? best = null;
        foreach (double[] beginning in beginnings)
        {
            double[] start = [Math.Min(0.99, waters.Max() + 0.01), .. beginning, .. fixedResidual is null ? [Math.Max(0.001, waters.Min() / 2)] : (double[])[]];
            if (Optimised(start, suctions, waters, Try) is { } found && (best is null || Error(found) < Error(best)))
                best = found;
        }

        if (best is null || !double.IsFinite(Error(best)))
            throw new InvalidOperationException("No curve of the form comes near the points.");

        double deviation = Math.Sqrt(Error(best) / (points.Count - unknowns));
        double[] errors = StandardErrors(best, suctions, Curve, deviation);
        double[] values = [best[0], .. shown(best[1..3]), .. best[3..]];
        string[] all = residual is null ? [.. names, "residual"] : names;
        return new RetentionFit(
            Curve(best),
            points,
            [.. all.Select((name, i) => new FittedParameter(name, values[i], errors[i]))],
            Ratio.FromPercent(100 * deviation));
    }

    private static double[]? Optimised(double[] start, double[] suctions, double[] waters, Func<double[], RetentionCurve?> curve)
    {
        Vector<double> At(Vector<double> free, Vector<double> x) => curve(Natural(free)) is { } made
            ? x.Map(made.WaterFraction)
            : Vector<double>.Build.Dense(x.Count, 10);
        IObjectiveModel model = ObjectiveFunction.NonlinearModel(
            At, Vector<double>.Build.DenseOfArray(suctions), Vector<double>.Build.DenseOfArray(waters), null, 6);
        try
        {
            NonlinearMinimizationResult result = new LevenbergMarquardtMinimizer(
                gradientTolerance: 1e-18, stepTolerance: 1e-15, functionTolerance: 1e-18, maximumIterations: 2000).FindMinimum(model, Free(start));
            return Natural(result.MinimizingPoint);
        }
        catch (Exception failed) when (failed is MathNet.Numerics.Optimization.OptimizationException or ArithmeticException or ArgumentException)
        {
            return null;
        }
    }

    // Shares are the first and the fourth, if there is one; the others are above zero.
    private static Vector<double> Free(double[] natural) => Vector<double>.Build.DenseOfEnumerable(natural.Select((value, i) =>
        i is 0 or 3 ? Math.Log(value / (1 - value)) : Math.Log(value)));

    private static double[] Natural(Vector<double> free) => [.. free.Select((value, i) => i is 0 or 3 ? 1 / (1 + Math.Exp(-value)) : Math.Exp(value))];

    /// <summary>s² (JᵀJ)⁻¹ at the optimum, with slopes by central differences in the parameters as they are.</summary>
    private static double[] StandardErrors(double[] natural, double[] suctions, Func<double[], RetentionCurve> curve, double deviation)
    {
        Matrix<double> slopes = Matrix<double>.Build.Dense(suctions.Length, natural.Length);
        for (int j = 0; j < natural.Length; j++)
        {
            double step = 1e-6 * natural[j];
            double[] lower = [.. natural];
            double[] upper = [.. natural];
            lower[j] -= step;
            upper[j] = Math.Min(upper[j] + step, j is 0 or 3 ? 1 : double.PositiveInfinity);
            RetentionCurve below = curve(lower);
            RetentionCurve above = curve(upper);
            for (int i = 0; i < suctions.Length; i++)
                slopes[i, j] = (above.WaterFraction(suctions[i]) - below.WaterFraction(suctions[i])) / (upper[j] - lower[j]);
        }

        // In proportion to the parameters, so that shares and suctions weigh alike.
        Matrix<double> information = slopes.TransposeThisAndMultiply(slopes);
        Matrix<double> relative = Matrix<double>.Build.Dense(natural.Length, natural.Length, (i, j) => information[i, j] * natural[i] * natural[j]);
        return relative.ConditionNumber() < 1e12
            ? [.. relative.Inverse().Diagonal().Select((variance, j) => deviation * Math.Sqrt(variance) * natural[j])]
            : throw new InvalidOperationException("The points do not tell the parameters apart: give the residual water, or points over a wider span of suctions.");
    }
}
