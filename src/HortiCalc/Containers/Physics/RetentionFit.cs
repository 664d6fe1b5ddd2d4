using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Containers;

/// <summary>A retention curve fitted to measured points, with how sure its parameters are.</summary>
/// <remarks>
/// Least squares of the water, by the method of Levenberg and Marquardt from several beginnings; standard errors from the residuals and the slopes at the optimum, as
/// for a straight line. They hold only as far as the errors of the points are even and independent. Immutable; equal when all members are equal.
/// </remarks>
/// <example><code>
/// RetentionPoint[] points =
/// [
///     new(Length.FromCentimeters(1), Ratio.FromPercent(90)), new(Length.FromCentimeters(10), Ratio.FromPercent(78)),
///     new(Length.FromCentimeters(30), Ratio.FromPercent(50)), new(Length.FromCentimeters(100), Ratio.FromPercent(30)),
///     new(Length.FromCentimeters(300), Ratio.FromPercent(25)), new(Length.FromCentimeters(1000), Ratio.FromPercent(22)),
/// ];
/// RetentionFit fit = RetentionFit.VanGenuchten(points);
/// Console.WriteLine(fit);
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record RetentionFit : IFormattable, IDisplayable
{
    /// <summary>Holds a fit.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="points">The points that it was fitted to.</param>
    /// <param name="parameters">The parameters that were fitted, with their standard errors.</param>
    /// <param name="residualDeviation">The standard deviation of the points about the curve, as a share of the volume; zero or more.</param>
    /// <exception cref="ArgumentNullException">A member is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The deviation is negative.</exception>
    public RetentionFit(
        RetentionCurve curve, IReadOnlyList<RetentionPoint> points, IReadOnlyList<FittedParameter> parameters, Ratio residualDeviation)
    {
        Curve = Guard.NotNull(curve);
        Points = ValueList<RetentionPoint>.Of(Guard.NotNull(points));
        Parameters = ValueList<FittedParameter>.Of(Guard.NotNull(parameters));
        Guard.NotNegative(Boundary.Fraction(residualDeviation) * 100, "%", nameof(residualDeviation));
        ResidualDeviation = HouseUnits.Normalise(residualDeviation);
    }

    /// <summary>The curve.</summary>
    public RetentionCurve Curve { get; }

    /// <summary>The points that it was fitted to.</summary>
    public IReadOnlyList<RetentionPoint> Points { get; }

    /// <summary>The parameters that were fitted, with their standard errors.</summary>
    public IReadOnlyList<FittedParameter> Parameters { get; }

    /// <summary>The standard deviation of the points about the curve, with a degree of freedom less for each parameter.</summary>
    public Ratio ResidualDeviation { get; }

    /// <summary>Fits a curve of van Genuchten.</summary>
    /// <param name="points">The points; more than parameters to fit (three, or four where <paramref name="residual"/> is to be found too), at different suctions.</param>
    /// <param name="residual">The residual water where it is known, as from a point at wilting; <see langword="null"/> to fit it too, zero or more.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentNullException">The points are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There are too few points, or not enough different suctions.</exception>
    /// <exception cref="InvalidOperationException">No curve of the form comes near the points, or they do not tell its parameters apart.</exception>
    public static RetentionFit VanGenuchten(IReadOnlyList<RetentionPoint> points, Ratio? residual = null) => RetentionFitting.Fit(
        points,
        residual,
        ["saturated", "alpha, 1/m", "n"],
        static (low, high, values) => new VanGenuchtenRetention(low, high, ReciprocalLength.FromInverseMeters(values[0]), values[1]),
        static values => [values[0], 1 + values[1]],
        [[0.5, 0.3], [2, 0.5], [8, 0.8], [30, 1.5], [1, 2]]);

    /// <summary>Fits a log-logistic curve.</summary>
    /// <param name="points">The points; more than parameters to fit (three, or four where <paramref name="residual"/> is to be found too), at different suctions.</param>
    /// <param name="residual">The residual water where it is known; <see langword="null"/> to fit it too, zero or more.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentNullException">The points are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">There are too few points, or not enough different suctions.</exception>
    /// <exception cref="InvalidOperationException">No curve of the form comes near the points, or they do not tell its parameters apart.</exception>
    public static RetentionFit LogLogistic(IReadOnlyList<RetentionPoint> points, Ratio? residual = null) => RetentionFitting.Fit(
        points,
        residual,
        ["saturated", "half suction, m", "slope"],
        static (low, high, values) => new LogLogisticRetention(low, high, Length.FromMeters(values[0]), values[1]),
        static values => values,
        [[0.05, 1], [0.2, 1], [0.5, 2], [1, 0.7], [3, 0.5]]);

    /// <summary>The fit in invariant culture.</summary>
    /// <returns>One line: the curve, the deviation of the points and their number.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The fit as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The curve, the deviation of the points and their number.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            .. Parameters.Select(parameter => new DisplayRow(
                parameter.Name, $"{QuantityText.Number(parameter.Value, style)} ± {QuantityText.Number(parameter.StandardError, style)}")),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Curve, style)}; {QuantityText.Of(Points.Count, style)} points about it by {QuantityText.Of(ResidualDeviation, style)} of the volume";
}
