using HortiCalc.Evidence;
using MathNet.Numerics.LinearRegression;

namespace HortiCalc.Climate;

/// <summary>How the regression of a night's minimum on the evening is fitted: minimum = b · temperature + a · dew point + c.</summary>
public sealed record NightMinimumFitting
{
    private readonly Solver solve;

    private NightMinimumFitting(string key, string name, bool usesDewPoint, Solver solve)
    {
        Evidence = new Method(
            key,
            name,
            FrostNightSources.Fao,
            new Domain(
                "nights with wind below 2 m/s and without cloud, fog or rain; readings two hours after sunset; fitted to nights of the same place",
                new DomainLimit("nights", NightMinimumModel.FewestNights, double.PositiveInfinity, "")));
        UsesDewPoint = usesDewPoint;
        this.solve = solve;
    }

    private delegate NightLine? Solver(double[] evenings, double[] dewPoints, double[] minima);

    /// <summary>
    /// In two steps, as published: the minimum on the temperature, then what is left on the dew point. The default, because the source's
    /// worked example comes out by it alone. It leaves to the temperature what temperature and dew point explain together.
    /// </summary>
    public static NightMinimumFitting TwoStep { get; } = new(
        "night-minimum.two-step", "regression on evening temperature, then on dew point", usesDewPoint: true, TwoSteps);

    /// <summary>Both at once, by joint least squares: the smallest residuals that such a line can have.</summary>
    public static NightMinimumFitting Joint { get; } = new(
        "night-minimum.joint", "joint regression on evening temperature and dew point", usesDewPoint: true, Jointly);

    /// <summary>The temperature alone, for those without a hygrometer: the first of the two steps.</summary>
    public static NightMinimumFitting TemperatureOnly { get; } = new(
        "night-minimum.temperature", "regression on evening temperature alone", usesDewPoint: false, OnTemperature);

    /// <summary>Every way of fitting there is.</summary>
    public static IReadOnlyList<NightMinimumFitting> All { get; } = ValueList<NightMinimumFitting>.Of([TwoStep, Joint, TemperatureOnly]);

    /// <summary>The method's key, name, source and domain.</summary>
    public Method Evidence { get; }

    /// <summary>Whether the dew point takes part.</summary>
    public bool UsesDewPoint { get; }

    /// <summary>How many coefficients are fitted.</summary>
    internal int Coefficients => UsesDewPoint ? 3 : 2;

    /// <summary>Finds a way of fitting by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The way of fitting.</returns>
    /// <exception cref="ArgumentException">There is none of that key, or the key is empty.</exception>
    public static NightMinimumFitting FromKey(string key) => Keyed.Find(All, fitting => fitting.Evidence.Key, key);

    /// <summary>The name.</summary>
    /// <returns>For instance <c>joint regression on evening temperature and dew point</c>.</returns>
    public override string ToString() => Evidence.Name;

    /// <summary>The fitted line; <see langword="null"/> where the nights are too alike to draw one.</summary>
    internal NightLine? Fit(double[] evenings, double[] dewPoints, double[] minima) => solve(evenings, dewPoints, minima);

    private static NightLine? OnTemperature(double[] evenings, double[] dewPoints, double[] minima)
    {
        if (!Varies(evenings))
            return null;
        (double intercept, double slope) = SimpleRegression.Fit(evenings, minima);
        return new NightLine(slope, 0, intercept);
    }

    private static NightLine? TwoSteps(double[] evenings, double[] dewPoints, double[] minima)
    {
        if (OnTemperature(evenings, dewPoints, minima) is not NightLine first || !Varies(dewPoints))
            return null;
        double[] left = [.. minima.Select((minimum, night) => minimum - first.Celsius(evenings[night], dewPoints[night]))];
        (double intercept, double slope) = SimpleRegression.Fit(dewPoints, left);
        return new NightLine(first.PerEveningCelsius, slope, first.Celsius(0, 0) + intercept);
    }

    // Two unknowns about the means: the normal equations of two by two, in full, need no matrix.
    private static NightLine? Jointly(double[] evenings, double[] dewPoints, double[] minima)
    {
        double evening = evenings.Average();
        double dewPoint = dewPoints.Average();
        double minimum = minima.Average();
        double ee = 0, dd = 0, ed = 0, em = 0, dm = 0;
        for (int night = 0; night < minima.Length; night++)
        {
            double e = evenings[night] - evening;
            double d = dewPoints[night] - dewPoint;
            double m = minima[night] - minimum;
            ee += e * e;
            dd += d * d;
            ed += e * d;
            em += e * m;
            dm += d * m;
        }

        // Where dew point and temperature rise in step the determinant is nothing but rounding.
        double determinant = ee * dd - ed * ed;
        if (!(determinant > 1e-9 * ee * dd))
            return null;
        double perEvening = (em * dd - dm * ed) / determinant;
        double perDewPoint = (dm * ee - em * ed) / determinant;
        return new NightLine(perEvening, perDewPoint, minimum - perEvening * evening - perDewPoint * dewPoint);
    }

    private static bool Varies(double[] values) => values.Max() - values.Min() > 1e-9;
}
