using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>A regression of the night's minimum on the evening, fitted to the clear, calm nights of one place.</summary>
/// <remarks>
/// <para>
/// Minimum = b · temperature + a · dew point + c, both read two hours after sunset. Its error is told in two ways: what the fitted nights leave over,
/// and the error of leaving each night out in turn and forecasting it from the others, which is what a new night can expect.
/// </para>
/// <para>
/// An evening outside the fitted nights is forecast with a caution as far again as the nights span, because the source's own example lies
/// there; further out it is refused.
/// </para>
/// <para>Immutable; equal when fitting and nights are equal.</para>
/// </remarks>
/// <example><code>
/// double[] evenings = [3.2, 0.8, 0.2, 2.6, 4.4, 5.2, 2.7, 1.2, 4.5, 5.6];
/// double[] dewPoints = [-4.2, -8.8, -6.5, -6.2, -6.1, 2.6, -0.7, -1.7, -1.2, 0.1];
/// double[] minima = [-3.1, -5, -6.3, -5.4, -4, -2.5, -4.8, -5, -4.4, -3.3];
/// NightMinimumModel model = new(
///     NightMinimumFitting.TwoStep,
///     [.. evenings.Select((evening, night) =&gt; new PastNight(
///         Temperature.FromDegreesCelsius(evening),
///         Temperature.FromDegreesCelsius(dewPoints[night]),
///         Temperature.FromDegreesCelsius(minima[night])))]);
/// Estimate&lt;Temperature&gt; minimum = model.Minimum(Temperature.FromDegreesCelsius(4), Temperature.FromDegreesCelsius(-3));
/// Console.WriteLine($"{minimum.Value.DegreesCelsius:F1} °C"); // -3.9 °C
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record NightMinimumModel : IFormattable, IDisplayable
{
    internal const int FewestNights = 10;

    private static readonly Method ChanceMethod = new(
        "night-minimum.chance",
        "chance by Student's t about the regression",
        Source.CommonPractice("night-minimum-chance", "errors of a regression follow Student's t"),
        new Domain("errors alike from night to night, their size that of nights left out"));

    private readonly NightLine line;

    /// <summary>Fits a regression to nights.</summary>
    /// <param name="fitting">How it is fitted; <see cref="NightMinimumFitting.TwoStep"/> is as published.</param>
    /// <param name="nights">The nights, 10 or more as published, all clear and calm and of one place.</param>
    /// <exception cref="ArgumentNullException">The fitting or the nights are missing.</exception>
    /// <exception cref="ArgumentException">
    /// There are too few nights, or they are too alike: all evenings of one temperature, of one dew point, or with both in step.
    /// </exception>
    public NightMinimumModel(NightMinimumFitting fitting, IReadOnlyList<PastNight> nights)
    {
        Fitting = Guard.NotNull(fitting);
        Nights = ValueList<PastNight>.Of(Guard.NotNull(nights));
        if (Nights.Count < FewestNights)
        {
            throw new ArgumentException(
                $"nights held {Guard.Number(Nights.Count)}; allowed: {FewestNights} or more, as published.", nameof(nights));
        }

        double[] evenings = [.. Nights.Select(night => night.EveningCelsius)];
        double[] dewPoints = [.. Nights.Select(night => night.DewPointCelsius)];
        double[] minima = [.. Nights.Select(night => night.MinimumCelsius)];
        line = fitting.Fit(evenings, dewPoints, minima) ?? throw TooAlike();
        double squares = minima.Select((minimum, night) => Square(minimum - line.Celsius(evenings[night], dewPoints[night]))).Sum();
        ResidualError = TemperatureDelta.FromDegreesCelsius(Math.Sqrt(squares / DegreesOfFreedom));

        double leftOut = 0;
        for (int night = 0; night < minima.Length; night++)
        {
            NightLine others = fitting.Fit(Without(evenings, night), Without(dewPoints, night), Without(minima, night)) ?? throw TooAlike();
            leftOut += Square(minima[night] - others.Celsius(evenings[night], dewPoints[night]));
        }

        LeaveOneOutError = TemperatureDelta.FromDegreesCelsius(Math.Sqrt(leftOut / minima.Length));
        EveningTemperatures = Span(evenings, "fitted nights");
        EveningDewPoints = Span(dewPoints, "fitted nights");
    }

    /// <summary>How the regression was fitted.</summary>
    public NightMinimumFitting Fitting { get; }

    /// <summary>The nights it was fitted to.</summary>
    public IReadOnlyList<PastNight> Nights { get; }

    /// <summary>How much the minimum rises with the evening's temperature: b, degrees per degree.</summary>
    [JsonIgnore]
    public double PerEveningTemperature => line.PerEveningCelsius;

    /// <summary>How much the minimum rises with the dew point: a, degrees per degree; 0 where it takes no part.</summary>
    [JsonIgnore]
    public double PerDewPoint => line.PerDewPointCelsius;

    /// <summary>The minimum of an evening of 0 °C with a dew point of 0 °C: c.</summary>
    [JsonIgnore]
    public Temperature Intercept => Temperature.FromDegreesCelsius(line.InterceptCelsius);

    /// <summary>The residual standard error: the root of the squares left over, divided by the nights less the coefficients.</summary>
    [JsonIgnore]
    public TemperatureDelta ResidualError { get; }

    /// <summary>The root mean square error of each night forecast from the others.</summary>
    [JsonIgnore]
    public TemperatureDelta LeaveOneOutError { get; }

    /// <summary>The evening temperatures of the fitted nights.</summary>
    [JsonIgnore]
    public EstimateRange<Temperature> EveningTemperatures { get; }

    /// <summary>The dew points of the fitted nights.</summary>
    [JsonIgnore]
    public EstimateRange<Temperature> EveningDewPoints { get; }

    private int DegreesOfFreedom => Nights.Count - Fitting.Coefficients;

    /// <summary>The minimum to expect of a night.</summary>
    /// <param name="eveningTemperature">The air temperature two hours after sunset.</param>
    /// <param name="eveningDewPoint">The dew point then, at most the air temperature.</param>
    /// <returns>
    /// The minimum; its range is the leave-one-out error to either side, which about two nights in three keep to. Neither is above the
    /// evening's temperature.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The dew point is above the air temperature, or the evening lies further outside the fitted nights than these span.
    /// </exception>
    public Estimate<Temperature> Minimum(Temperature eveningTemperature, Temperature eveningDewPoint)
    {
        double evening = NightCelsius.Air(eveningTemperature, nameof(eveningTemperature));
        double dewPoint = NightCelsius.NotAbove(eveningDewPoint, evening, nameof(eveningDewPoint));
        bool outside = Outside(evening, EveningTemperatures, nameof(eveningTemperature));
        if (Fitting.UsesDewPoint)
            outside |= Outside(dewPoint, EveningDewPoints, nameof(eveningDewPoint));
        double forecast = line.Celsius(evening, dewPoint);
        double error = LeaveOneOutError.DegreesCelsius;
        return new Estimate<Temperature>(
            AtMost(forecast, evening),
            Fitting.Evidence,
            new EstimateRange<Temperature>(
                AtMost(forecast - error, evening), AtMost(forecast + error, evening), "leave-one-out error to either side, about two nights in three"),
            cautions:
            [
                .. FrostNightCautions.Night,
                FrostNightCautions.RadiationNightsOnly,
                FrostNightCautions.OwnNights,
                .. outside ? [FrostNightCautions.OutsideFittedNights] : (Caution[])[],
                .. forecast > evening ? [FrostNightCautions.NoCooling] : (Caution[])[],
            ]);
    }

    /// <summary>The chance that the night becomes as cold as a threshold, or colder.</summary>
    /// <param name="eveningTemperature">The air temperature two hours after sunset.</param>
    /// <param name="eveningDewPoint">The dew point then, at most the air temperature.</param>
    /// <param name="threshold">The threshold, below the evening's temperature or at it.</param>
    /// <returns>The chance by Student's t about the regression, with the leave-one-out error for its width.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The dew point or the threshold is above the air temperature, or the evening lies further outside the fitted nights than these span.
    /// </exception>
    public Estimate<Ratio> ChanceOfMinimumAtOrBelow(Temperature eveningTemperature, Temperature eveningDewPoint, Temperature threshold)
    {
        Estimate<Temperature> minimum = Minimum(eveningTemperature, eveningDewPoint);
        double evening = Boundary.Celsius(eveningTemperature);
        double limit = NightCelsius.NotAbove(threshold, evening, nameof(threshold));
        double forecast = line.Celsius(evening, Boundary.Celsius(eveningDewPoint));
        double error = LeaveOneOutError.DegreesCelsius;

        // Nights without any error left over: the line itself decides.
        double chance = limit >= evening ? 1
            : error > 0 ? StudentT.CDF(0, 1, DegreesOfFreedom, (limit - forecast) / error)
            : forecast <= limit ? 1 : 0;
        return new Estimate<Ratio>(Ratio.FromPercent(chance * 100), ChanceMethod, cautions: minimum.Cautions);
    }

    /// <summary>Whether two models are equal.</summary>
    /// <param name="other">The other.</param>
    /// <returns><see langword="true"/> where fitting and nights are equal.</returns>
    public bool Equals(NightMinimumModel? other) => other is not null && Fitting == other.Fitting && Nights.Equals(other.Nights);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Fitting, Nights);

    /// <summary>The model in metric units and invariant culture.</summary>
    /// <returns>One line: the equation, its errors, how many nights.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The model as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the equation, its errors, how many nights.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new("Minimum of a clear, calm night")
    {
        Rows =
        [
            new DisplayRow("equation", Equation(style)),
            new DisplayRow("residual error", QuantityText.Of(ResidualError, style)),
            new DisplayRow("leave-one-out error", QuantityText.Of(LeaveOneOutError, style)),
            new DisplayRow("nights", QuantityText.Of(Nights.Count, style)),
            new DisplayRow("method", Fitting.Evidence.Name),
            new DisplayRow("source", Fitting.Evidence.Source.ToString()),
        ],
    };

    private static double Square(double value) => value * value;

    private static double[] Without(double[] values, int left) => [.. values.Where((_, night) => night != left)];

    private static EstimateRange<Temperature> Span(double[] celsius, string meaning) =>
        new(Temperature.FromDegreesCelsius(celsius.Min()), Temperature.FromDegreesCelsius(celsius.Max()), meaning);

    private static Temperature AtMost(double celsius, double highestCelsius) => Temperature.FromDegreesCelsius(Math.Min(celsius, highestCelsius));

    private static bool Outside(double celsius, EstimateRange<Temperature> fitted, string parameter)
    {
        double low = Boundary.Celsius(fitted.Low);
        double high = Boundary.Celsius(fitted.High);
        double span = high - low;
        if (celsius < low - span || celsius > high + span)
        {
            throw Guard.Refused(
                parameter,
                celsius,
                "°C",
                $"from {Guard.Number(low - span)} to {Guard.Number(high + span)} °C, once more to either side of the fitted nights from {Guard.Number(low)} to {Guard.Number(high)} °C");
        }

        return celsius < low || celsius > high;
    }

    private static ArgumentException TooAlike() => new(
        "nights were too alike, in temperature, in dew point or with both in step; allowed: nights that differ, also when any one of them is left out.",
        "nights");

    private string Equation(TextStyle style)
    {
        // The constant depends on the scale: c at 0 °C is another number at 0 °F.
        bool us = style.Units == MeasurementSystem.UsCustomary;
        double atZero = us
            ? Boundary.FahrenheitFromCelsius(line.Celsius(Boundary.CelsiusFromFahrenheit(0), Boundary.CelsiusFromFahrenheit(0)))
            : line.InterceptCelsius;
        if (us && !Fitting.UsesDewPoint)
            atZero = Boundary.FahrenheitFromCelsius(line.Celsius(Boundary.CelsiusFromFahrenheit(0), 0));
        string dewPoint = Fitting.UsesDewPoint ? $" + {QuantityText.Number(PerDewPoint, style)} × dew point" : "";
        return $"{QuantityText.Number(PerEveningTemperature, style)} × evening temperature{dewPoint} + {QuantityText.Number(atZero, style)} {(us ? "°F" : "°C")}";
    }

    private string ToString(TextStyle style) =>
        $"minimum = {Equation(style)}; residual error {QuantityText.Of(ResidualError, style)}, leave-one-out error {QuantityText.Of(LeaveOneOutError, style)} "
        + $"over {QuantityText.Of(Nights.Count, style)} nights; {Fitting.Evidence}";
}
