using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>What a temperature does to a crop at a stage when it lasts for half an hour, by one source.</summary>
/// <remarks>
/// <para>
/// Between the printed 10 % and 90 % the share is interpolated on a straight line. A curve of doses (probit) through the same two points lies
/// within 4 % of the buds of that line everywhere between them, less than the sources differ, and would say something of what lies outside
/// them, where nothing is printed. Outside, the answer is "less than 10 %" or "more than 90 %", never a number.
/// </para>
/// <para>Immutable; equal when all members are equal.</para>
/// </remarks>
public sealed record FrostDamage : IFormattable
{
    private const double TenPercent = 10;
    private const double NinetyPercent = 90;

    private static readonly Method StraightLine = new(
        "frost-damage.straight-line",
        "straight line between the temperatures that kill 10 % and 90 %",
        Source.CommonPractice("frost-damage-straight-line", "a straight line between two printed points"),
        new Domain("exposure of half an hour", new DomainLimit("share", TenPercent, NinetyPercent, "%")));

    /// <summary>Describes what a temperature does.</summary>
    /// <param name="critical">What the source prints for the crop and the stage.</param>
    /// <param name="temperature">The temperature that lasts for half an hour.</param>
    /// <exception cref="ArgumentNullException">The source's line is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside -90 to 60 °C.</exception>
    public FrostDamage(CriticalTemperature critical, Temperature temperature)
    {
        Critical = Guard.NotNull(critical);
        NightCelsius.Air(temperature, nameof(temperature));
        Temperature = HouseUnits.Normalise(temperature);
        double celsius = Boundary.Celsius(Temperature);
        if (critical.TenPercentKill is not Temperature ten)
        {
            Level = celsius > Boundary.Celsius(critical.HighestCritical!.Value) ? FrostDamageLevel.WarmerThanCritical
                : celsius < Boundary.Celsius(critical.LowestCritical!.Value) ? FrostDamageLevel.ColderThanCritical
                : FrostDamageLevel.AtCritical;
            return;
        }

        double tenCelsius = Boundary.Celsius(ten);
        if (celsius > tenCelsius)
        {
            Level = FrostDamageLevel.LessThanTenPercent;
        }
        else if (critical.NinetyPercentKill is not Temperature ninety)
        {
            Level = FrostDamageLevel.TenPercentOrMore;
        }
        else if (celsius < Boundary.Celsius(ninety))
        {
            Level = FrostDamageLevel.MoreThanNinetyPercent;
        }
        else
        {
            Level = FrostDamageLevel.TenToNinetyPercent;
            double way = (tenCelsius - celsius) / (tenCelsius - Boundary.Celsius(ninety));
            Share = new Estimate<Ratio>(
                Ratio.FromPercent(TenPercent + (NinetyPercent - TenPercent) * way),
                StraightLine,
                cautions: [FrostNightCautions.BudKillIsNotCropLoss, FrostNightCautions.SourcesDiffer]);
        }
    }

    /// <summary>What the source prints for the crop and the stage.</summary>
    public CriticalTemperature Critical { get; }

    /// <summary>The temperature that lasts for half an hour.</summary>
    public Temperature Temperature { get; }

    /// <summary>How far the damage goes.</summary>
    [JsonIgnore]
    public FrostDamageLevel Level { get; }

    /// <summary>The share of buds killed; <see langword="null"/> outside the printed 10 % to 90 %.</summary>
    [JsonIgnore]
    public Estimate<Ratio>? Share { get; }

    /// <summary>Whether the source calls the temperature harmful: at its critical temperature, or 10 % killed, or more.</summary>
    [JsonIgnore]
    public bool IsHarmful => Boundary.Celsius(Temperature) <= Boundary.Celsius(Critical.Harmful);

    /// <summary>The damage in metric units and invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The damage as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>One line: temperature, damage, and what the source prints.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    /// <summary>The damage in words, without the source.</summary>
    internal string Words(TextStyle style) => Level switch
    {
        FrostDamageLevel.WarmerThanCritical => "warmer than critical",
        FrostDamageLevel.AtCritical => "at the critical temperature",
        FrostDamageLevel.ColderThanCritical => "colder than critical",
        FrostDamageLevel.LessThanTenPercent => "less than 10 % of buds killed",
        FrostDamageLevel.TenPercentOrMore => "10 % of buds killed, or more",
        FrostDamageLevel.MoreThanNinetyPercent => "more than 90 % of buds killed",
        _ => $"about {QuantityText.Of(Share!.Value, style)} of buds killed",
    };

    private string ToString(TextStyle style) =>
        $"{QuantityText.Of(Temperature, style)} for half an hour: {Words(style)}; {Critical.ToString(style.Format, style.Culture)}";
}
