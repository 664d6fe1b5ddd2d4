using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The cold that a crop stands at a stage, as one source prints it.</summary>
/// <remarks>
/// Immutable; equal when all members are equal. A source prints the temperatures that kill 10 % and 90 % of the buds in half an hour, or the
/// critical temperature, or both; the columns of one source need not be nested.
/// </remarks>
public sealed record CriticalTemperature : IFormattable
{
    /// <summary>Describes what a source prints for a crop at a stage.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="variety">The varieties it holds for; empty where for all.</param>
    /// <param name="stage">The stage as the source calls it.</param>
    /// <param name="commonStage">The stage in the words that the library uses for all sources of the crop.</param>
    /// <param name="lowestCritical">The critical temperature, or the low end of its range; <see langword="null"/> where none is printed.</param>
    /// <param name="highestCritical">The critical temperature, or the high end of its range; <see langword="null"/> where none is printed.</param>
    /// <param name="tenPercentKill">What kills 10 % of the buds in half an hour; <see langword="null"/> where it is not printed.</param>
    /// <param name="ninetyPercentKill">What kills 90 % of the buds in half an hour, colder; <see langword="null"/> where it is not printed.</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">A text or the source is missing.</exception>
    /// <exception cref="ArgumentException">A text is empty, no temperature is given, or one of a pair that needs the other.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is out of its range.</exception>
    public CriticalTemperature(
        string crop,
        string variety,
        string stage,
        string commonStage,
        Temperature? lowestCritical,
        Temperature? highestCritical,
        Temperature? tenPercentKill,
        Temperature? ninetyPercentKill,
        Source source)
    {
        Crop = Guard.NotBlank(crop);
        Variety = Guard.NotNull(variety);
        Stage = Guard.NotBlank(stage);
        CommonStage = Guard.NotBlank(commonStage);
        Source = Guard.NotNull(source);
        if (lowestCritical.HasValue != highestCritical.HasValue)
            throw new ArgumentException("lowestCritical and highestCritical were not both given; allowed: both or neither.", nameof(highestCritical));
        if (tenPercentKill is null && (ninetyPercentKill is not null || highestCritical is null))
        {
            throw new ArgumentException(
                "tenPercentKill was not given; allowed: with a critical temperature, and without ninetyPercentKill.", nameof(tenPercentKill));
        }

        if (highestCritical is Temperature high)
            NightCelsius.NotAbove(lowestCritical!.Value, NightCelsius.Air(high, nameof(highestCritical)), nameof(lowestCritical));
        if (tenPercentKill is Temperature ten)
        {
            double tenCelsius = NightCelsius.Air(ten, nameof(tenPercentKill));
            if (ninetyPercentKill is Temperature ninety && !(NightCelsius.NotAbove(ninety, tenCelsius, nameof(ninetyPercentKill)) < tenCelsius))
                throw Guard.Refused(nameof(ninetyPercentKill), tenCelsius, "°C", $"below {Guard.Number(tenCelsius)} °C, which kills 10 %");
        }

        LowestCritical = Settled(lowestCritical);
        HighestCritical = Settled(highestCritical);
        TenPercentKill = Settled(tenPercentKill);
        NinetyPercentKill = Settled(ninetyPercentKill);
    }

    /// <summary>The crop.</summary>
    public string Crop { get; }

    /// <summary>The varieties it holds for; empty where for all.</summary>
    public string Variety { get; }

    /// <summary>The stage as the source calls it.</summary>
    public string Stage { get; }

    /// <summary>The stage in the words that the library uses for all sources of the crop.</summary>
    public string CommonStage { get; }

    /// <summary>The critical temperature, or the low end of its range; <see langword="null"/> where none is printed.</summary>
    public Temperature? LowestCritical { get; }

    /// <summary>The critical temperature, or the high end of its range; <see langword="null"/> where none is printed.</summary>
    public Temperature? HighestCritical { get; }

    /// <summary>What kills 10 % of the buds in half an hour; <see langword="null"/> where it is not printed.</summary>
    public Temperature? TenPercentKill { get; }

    /// <summary>What kills 90 % of the buds in half an hour; <see langword="null"/> where it is not printed.</summary>
    public Temperature? NinetyPercentKill { get; }

    /// <summary>Where it is printed.</summary>
    public Source Source { get; }

    /// <summary>The warmest temperature that the source names as harmful: what to protect the crop from.</summary>
    [JsonIgnore]
    public Temperature Harmful =>
        TenPercentKill is Temperature ten && (HighestCritical is not Temperature critical || Boundary.Celsius(ten) > Boundary.Celsius(critical))
            ? ten
            : HighestCritical!.Value;

    /// <summary>What a temperature does to the crop when it lasts for half an hour.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>The damage, a number only between the printed 10 % and 90 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside -90 to 60 °C.</exception>
    public FrostDamage DamageAt(Temperature temperature) => new(this, temperature);

    /// <summary>The line of the table in metric units and invariant culture.</summary>
    /// <returns>Crop, stage, temperatures and source.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The line of the table as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Crop, stage, temperatures and source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string Temperatures(TextStyle style)
    {
        List<string> parts = [];
        if (HighestCritical is Temperature high && LowestCritical is Temperature low)
            parts.Add("critical " + (Boundary.Celsius(high) == Boundary.Celsius(low) ? QuantityText.Of(high, style) : $"{QuantityText.Of(low, style)} to {QuantityText.Of(high, style)}"));
        if (TenPercentKill is Temperature ten)
            parts.Add($"10 % killed at {QuantityText.Of(ten, style)}");
        if (NinetyPercentKill is Temperature ninety)
            parts.Add($"90 % at {QuantityText.Of(ninety, style)}");
        return string.Join(", ", parts);
    }

    private static Temperature? Settled(Temperature? value) => value is Temperature given ? HouseUnits.Normalise(given) : null;

    private string ToString(TextStyle style)
    {
        string variety = Variety.Length == 0 ? "" : $" ({Variety})";
        return $"{Crop}{variety}, {Stage}: {Temperatures(style)} [{Source}]";
    }
}
