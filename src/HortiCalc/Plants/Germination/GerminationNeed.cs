using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>The thermal time that seed needs, with the shape and the temperatures it was found with.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. A source that prints the time at the optimum instead (biological or physiological days) is
/// held by that time multiplied by the degrees from base to optimum.
/// </remarks>
/// <example><code>
/// CardinalTemperatures temperatures = new(
///     Temperature.FromDegreesCelsius(5), Temperature.FromDegreesCelsius(12.53), Temperature.FromDegreesCelsius(25), Temperature.FromDegreesCelsius(40.12));
/// ThermalTime needed = ThermalTime.From(TemperatureDelta.FromDegreesCelsius(12.53 - 5), Duration.FromHours(165.5));
/// GerminationNeed fennel = new(
///     "fennel", "moist paper", GerminationStage.Germination, Ratio.FromPercent(50), GerminationResponse.Segmented, temperatures, needed, needed,
///     Source.CommonPractice("own-trial", "own trial"));
/// </code></example>
public sealed record GerminationNeed : IFormattable
{
    /// <summary>Describes a need.</summary>
    /// <param name="crop">The plant in plain English.</param>
    /// <param name="condition">The condition it was found in.</param>
    /// <param name="stage">What the count ends with.</param>
    /// <param name="share">The share of the seed that has come by then, above 0 to 100 %; <see langword="null"/> where the source does not state it.</param>
    /// <param name="response">The shape of the rate.</param>
    /// <param name="temperatures">The temperatures the shape is drawn through.</param>
    /// <param name="low">The smallest printed thermal time, greater than 0.</param>
    /// <param name="high">The largest printed thermal time; the same where one is printed.</param>
    /// <param name="source">Where it was published.</param>
    /// <param name="highest">The highest temperature that the shape was found to hold for; <see langword="null"/> where only the ceiling ends it.</param>
    /// <param name="countsAir">Whether the source counted the temperature of the air.</param>
    /// <exception cref="ArgumentNullException">A text, the shape, the temperatures or the source is missing.</exception>
    /// <exception cref="ArgumentException">A text is empty, or the shape cannot be drawn through the temperatures.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The thermal time is not greater than 0 or out of order, the share is out of range, the stage is none of the defined ones, or the highest
    /// temperature is not above the base.
    /// </exception>
    public GerminationNeed(
        string crop,
        string condition,
        GerminationStage stage,
        Ratio? share,
        GerminationResponse response,
        CardinalTemperatures temperatures,
        ThermalTime low,
        ThermalTime high,
        Source source,
        Temperature? highest = null,
        bool countsAir = false)
    {
        Crop = Guard.NotBlank(crop);
        Condition = Guard.NotBlank(condition);
        Stage = Guard.Defined(stage);
        if (share is Ratio given)
        {
            double percent = Boundary.Fraction(given) * 100;
            if (!(percent is > 0 and <= 100))
                throw Guard.Refused(nameof(share), percent, "%", "above 0, up to 100 %");
            Share = HouseUnits.Normalise(given);
        }

        Response = Guard.NotNull(response);
        Temperatures = Guard.NotNull(temperatures);
        response.Require(temperatures);
        Guard.Positive(low.CelsiusDays, "°C·d", nameof(low));
        Guard.AtLeast(high.CelsiusDays, low.CelsiusDays, "°C·d", nameof(high));
        Low = low;
        High = high;
        Source = Guard.NotNull(source);
        if (highest is Temperature end)
        {
            Highest = HouseUnits.Normalise(end);
            double celsius = SeedbedTemperature.Celsius(end, nameof(highest));
            if (!(celsius > temperatures.BaseCelsius))
                throw Guard.Refused(nameof(highest), celsius, "°C", $"above the base, {Guard.Number(temperatures.BaseCelsius)} °C");
        }

        CountsAir = countsAir;
    }

    /// <summary>The plant in plain English.</summary>
    public string Crop { get; }

    /// <summary>The condition it was found in.</summary>
    public string Condition { get; }

    /// <summary>What the count ends with.</summary>
    public GerminationStage Stage { get; }

    /// <summary>The share of the seed that has come by then; <see langword="null"/> where the source does not state it.</summary>
    public Ratio? Share { get; }

    /// <summary>The shape of the rate.</summary>
    public GerminationResponse Response { get; }

    /// <summary>The temperatures the shape is drawn through.</summary>
    public CardinalTemperatures Temperatures { get; }

    /// <summary>The smallest printed thermal time.</summary>
    public ThermalTime Low { get; }

    /// <summary>The largest printed thermal time.</summary>
    public ThermalTime High { get; }

    /// <summary>Where it was published.</summary>
    public Source Source { get; }

    /// <summary>The highest temperature that the shape was found to hold for; <see langword="null"/> where only the ceiling ends it.</summary>
    public Temperature? Highest { get; }

    /// <summary>Whether the source counted the temperature of the air.</summary>
    public bool CountsAir { get; }

    /// <summary>The middle of the printed thermal times.</summary>
    [JsonIgnore]
    public ThermalTime Middle => ThermalTime.FromCelsiusDays(Low.CelsiusDays + (High.CelsiusDays - Low.CelsiusDays) / 2);

    /// <summary>The need in metric units and invariant culture.</summary>
    /// <returns>For instance <c>onion: 80 °C·d to germination of 50 %; base 2.5 °C [...]</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The need as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Plant, thermal time, stage, temperatures and source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string StageAndShare(TextStyle style)
    {
        string stage = Stage == GerminationStage.Germination ? "germination" : "emergence";
        return Share is Ratio share ? $"{stage} of {QuantityText.Of(share, style)}" : stage;
    }

    internal string ToString(TextStyle style)
    {
        string sum = Low == High ? QuantityText.Of(Low, style) : $"{QuantityText.Of(Low, style)} to {QuantityText.Of(High, style)}";
        return $"{Crop}: {sum} to {StageAndShare(style)}; {Temperatures.ToString(style)} [{Source}]";
    }

    /// <summary>What stands behind a time made with this need.</summary>
    internal Method MethodFor(string parameter) => new(
        Response.Evidence.Key,
        Response.Evidence.Name,
        Source,
        Highest is Temperature highest
            ? new Domain(Condition, new DomainLimit(parameter, double.NegativeInfinity, Boundary.Celsius(highest), "°C"))
            : new Domain(Condition));

    internal IReadOnlyList<Caution> Cautions()
    {
        List<Caution> cautions = [GerminationEvidence.MoistSeedbed];
        if (Share is null)
            cautions.Add(GerminationEvidence.ShareNotStated);
        if (CountsAir)
            cautions.Add(GerminationEvidence.AirTemperature);
        return cautions;
    }
}
