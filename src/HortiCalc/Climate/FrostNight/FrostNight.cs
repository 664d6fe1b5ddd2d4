using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Tonight: from what is read in the evening to how cold it becomes, how long, what that does to the crop, and what to do when.</summary>
/// <remarks>
/// <para>
/// For nights of radiation frost, as the regression was published for: wind below 2 m/s and no cloud, fog or rain; others are refused, because nothing is
/// published for them but the forecast. <see cref="FrostTypes"/> tells them apart first.
/// </para>
/// <para>Immutable; equal when evening, model and crop are equal. As JSON it is these three; the answers follow from them.</para>
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
/// FrostNight tonight = new(
///     new FrostEvening(
///         sunset: new DateTime(2027, 4, 20, 20, 10, 0),
///         sunrise: new DateTime(2027, 4, 21, 6, 5, 0),
///         temperature: Temperature.FromDegreesCelsius(4),
///         dewPoint: Temperature.FromDegreesCelsius(-3),
///         windSpeed: Speed.FromMetersPerSecond(1),
///         isClear: true),
///     model,
///     CriticalTemperatures.For("apple", "full bloom"));
/// Console.WriteLine(tonight.Advice);          // Protect
/// foreach (FrostDamage damage in tonight.Damage)
///     Console.WriteLine(damage);
/// </code></example>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record FrostNight : IFormattable, IDisplayable
{
    private const double WindLimitMetresPerSecond = 2;

    /// <summary>Works out a night.</summary>
    /// <param name="evening">What was read.</param>
    /// <param name="model">The regression of the place.</param>
    /// <param name="crop">What the sources print for the crop at its stage, one or more; see <see cref="CriticalTemperatures.For"/>.</param>
    /// <exception cref="ArgumentNullException">An input is missing.</exception>
    /// <exception cref="ArgumentException">Nothing is given for the crop.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The evening is windy or cloudy, or too far from the fitted nights, so that the regression was not published for it.
    /// </exception>
    public FrostNight(FrostEvening evening, NightMinimumModel model, IReadOnlyList<CriticalTemperature> crop)
    {
        Evening = Guard.NotNull(evening);
        Model = Guard.NotNull(model);
        Crop = ValueList<CriticalTemperature>.Of(Guard.NotNull(crop));
        if (Crop.Count == 0)
            throw new ArgumentException("crop held no critical temperature; allowed: 1 or more.", nameof(crop));
        if (!(evening.MetresPerSecond < WindLimitMetresPerSecond))
        {
            throw new ArgumentOutOfRangeException(
                nameof(evening),
                $"windSpeed of the evening was {Guard.Number(evening.MetresPerSecond)} m/s; allowed: below 2 m/s, {PublishedFor(model)}.");
        }

        if (!evening.IsClear)
        {
            throw new ArgumentOutOfRangeException(
                nameof(evening), $"isClear of the evening was false; allowed: true, no cloud, fog or rain, {PublishedFor(model)}.");
        }

        Type = FrostTypes.Of(evening.WindSpeed, evening.IsClear, evening.Inversion);
        Minimum = model.Minimum(evening.Temperature, evening.DewPoint);
        Cooling = new NightCooling(evening.Sunset, evening.Sunrise, evening.Temperature, Minimum.Value);
        Harmful = Crop.Select(line => line.Harmful).MaxBy(Boundary.Celsius);
        Damage = DamageAt(Minimum.Value);
        DamageAtColdEnd = DamageAt(Minimum.Range!.Low);
        ChanceOfHarm = Boundary.Celsius(Harmful) <= Boundary.Celsius(evening.Temperature)
            ? model.ChanceOfMinimumAtOrBelow(evening.Temperature, evening.DewPoint, Harmful)
            : model.ChanceOfMinimumAtOrBelow(evening.Temperature, evening.DewPoint, evening.Temperature);
        Domain sprinkling = SprinklerStartMethod.Psychrometric.Evidence.Domain;
        if (sprinkling.Contains("criticalTemperature", Boundary.Celsius(Harmful)) && sprinkling.Contains("dewPoint", Boundary.Celsius(evening.DewPoint)))
        {
            SprinklerStart = Sprinkling.StartTemperature(evening.DewPoint, Harmful, evening.AirPressure);
            SprinklerStartTime = Cooling.TimeReached(SprinklerStart.Value);
        }

        Advice = Damage.Any(damage => damage.IsHarmful) ? FrostAdvice.Protect
            : DamageAtColdEnd.Any(damage => damage.IsHarmful) ? FrostAdvice.BeReady
            : FrostAdvice.Watch;
        Definitions = FrostDefinitions.Covering(Minimum.Value, FrostSensor.Air);
        Cautions = ValueList<Caution>.Of(
        [
            .. Minimum.Cautions
                .Concat(Cooling.Cautions)
                .Append(FrostNightCautions.BudKillIsNotCropLoss)
                .Append(FrostNightCautions.SourcesDiffer)
                .Concat(SprinklerStart?.Cautions ?? [])
                .Append(FrostNightCautions.CoverBeforeDark)
                .Append(FrostNightCautions.Fire)
                .Distinct(),
        ]);
    }

    /// <summary>What was read in the evening.</summary>
    public FrostEvening Evening { get; }

    /// <summary>The regression of the place.</summary>
    public NightMinimumModel Model { get; }

    /// <summary>What the sources print for the crop at its stage.</summary>
    public IReadOnlyList<CriticalTemperature> Crop { get; }

    /// <summary>Radiation frost, or unclear where there is no inversion.</summary>
    [JsonIgnore]
    public Estimate<FrostType> Type { get; }

    /// <summary>The minimum to expect, and its range.</summary>
    [JsonIgnore]
    public Estimate<Temperature> Minimum { get; }

    /// <summary>How the air cools to that minimum.</summary>
    [JsonIgnore]
    public NightCooling Cooling { get; }

    /// <summary>The warmest temperature that any of the sources names as harmful to the crop.</summary>
    [JsonIgnore]
    public Temperature Harmful { get; }

    /// <summary>The chance that the night becomes as cold as that, or colder.</summary>
    [JsonIgnore]
    public Estimate<Ratio> ChanceOfHarm { get; }

    /// <summary>How long the air is at the harmful temperature or below it, up to sunrise.</summary>
    [JsonIgnore]
    public Duration DurationOfHarm => Cooling.DurationBelow(Harmful);

    /// <summary>When the air comes down to the harmful temperature; <see langword="null"/> where it does not.</summary>
    [JsonIgnore]
    public DateTime? TimeOfHarm => Cooling.TimeReached(Harmful);

    /// <summary>
    /// What the minimum does to the crop, by each source. The sources print half an hour of it, and the cold lasts past sunrise: the minimum is taken to
    /// last that long.
    /// </summary>
    [JsonIgnore]
    public IReadOnlyList<FrostDamage> Damage { get; }

    /// <summary>The same, should the night fall to the cold end of the range.</summary>
    [JsonIgnore]
    public IReadOnlyList<FrostDamage> DamageAtColdEnd { get; }

    /// <summary>
    /// The air temperature at which sprinkling must start, if that is how the crop is protected; <see langword="null"/> where the crop or the air
    /// lies outside what the psychrometric equation is used for.
    /// </summary>
    [JsonIgnore]
    public Estimate<Temperature>? SprinklerStart { get; }

    /// <summary>When the air comes down to it; <see langword="null"/> where it does not.</summary>
    [JsonIgnore]
    public DateTime? SprinklerStartTime { get; }

    /// <summary>What to do.</summary>
    [JsonIgnore]
    public FrostAdvice Advice { get; }

    /// <summary>What services and authors call a night of that minimum.</summary>
    [JsonIgnore]
    public IReadOnlyList<FrostDefinition> Definitions { get; }

    /// <summary>What to take care of.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>Whether two nights are equal.</summary>
    /// <param name="other">The other.</param>
    /// <returns><see langword="true"/> where evening, model and crop are equal.</returns>
    public bool Equals(FrostNight? other) =>
        other is not null && Evening == other.Evening && Model == other.Model && Crop.Equals(other.Crop);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Evening, Model, Crop);

    /// <summary>The night in metric units and invariant culture.</summary>
    /// <returns>One line: the minimum, how long the crop is in danger, and what to do.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The night as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: the minimum, how long the crop is in danger, and what to do.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new("Tonight: " + AdviceWords)
    {
        Rows =
        [
            new DisplayRow("minimum", $"{QuantityText.Of(Minimum.Value, style)} ({Minimum.Range!.ToString(style.Format, style.Culture)})"),
            new DisplayRow("harmful", $"{QuantityText.Of(Harmful, style)}, chance {QuantityText.Of(ChanceOfHarm.Value, style)}"),
            new DisplayRow("for", $"{QuantityText.Of(DurationOfHarm, style)}, from {Time(TimeOfHarm)}"),
            .. Damage.Select(damage => new DisplayRow(damage.Critical.Stage, $"{damage.Words(style)} [{damage.Critical.Source}]")),
            .. SprinklerStart is null
                ? (DisplayRow[])[]
                : [new DisplayRow("sprinkle from", $"{QuantityText.Of(SprinklerStart.Value, style)}, {Time(SprinklerStartTime)}")],
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("method", Minimum.Method.ToString()),
        ],
    };

    private static string PublishedFor(NightMinimumModel model) => $"which is what '{model.Fitting.Evidence.Name}' was published for";

    private static string Time(DateTime? time) => time is DateTime known ? HourRange.Text(known) : "not reached";

    private string AdviceWords => Advice switch
    {
        FrostAdvice.Protect => "protect the crop",
        FrostAdvice.BeReady => "be ready to protect the crop",
        _ => "watch the thermometer",
    };

    private ValueList<FrostDamage> DamageAt(Temperature minimum) => ValueList<FrostDamage>.Of([.. Crop.Select(line => line.DamageAt(minimum))]);

    private string ToString(TextStyle style) =>
        $"{AdviceWords}: {QuantityText.Of(Minimum.Value, style)} ({Minimum.Range!.ToString(style.Format, style.Culture)}) by {HourRange.Text(Evening.Sunrise)}, "
        + $"{QuantityText.Of(DurationOfHarm, style)} at {QuantityText.Of(Harmful, style)} or below; {Minimum.Method}; {QuantityText.Of(Cautions.Count, style)} cautions";
}
