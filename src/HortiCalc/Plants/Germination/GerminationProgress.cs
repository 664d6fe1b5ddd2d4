using System.Text.Json.Serialization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>How far seed has come over a run of days, and when it came up.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record GerminationProgress : IFormattable, IDisplayable
{
    /// <summary>Holds a progress.</summary>
    /// <param name="need">What the seed needs.</param>
    /// <param name="sown">The day of sowing.</param>
    /// <param name="days">The days counted, 0 or more: to the day that met the need, or all there were.</param>
    /// <param name="sum">The thermal time of those days.</param>
    /// <param name="daysTooCold">How many of them were at or below the base.</param>
    /// <param name="daysTooHot">How many of them were at or above the ceiling.</param>
    /// <param name="elapsed">The time from the start of the day of sowing until the need was met; <see langword="null"/> where it was not.</param>
    /// <param name="partOfDay">The part of the last day that it took, from 0 to 100 %; <see langword="null"/> where the need was not met.</param>
    /// <exception cref="ArgumentNullException">The need is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count, the sum or a time is negative, or the part is out of range.</exception>
    /// <exception cref="ArgumentException">Of the time and the part of the day one is there without the other.</exception>
    public GerminationProgress(
        GerminationNeed need,
        DateOnly sown,
        int days,
        ThermalTime sum,
        int daysTooCold,
        int daysTooHot,
        Duration? elapsed = null,
        Ratio? partOfDay = null)
    {
        Need = Guard.NotNull(need);
        Sown = sown;
        Days = Guard.AtLeast(days, 0);
        Guard.NotNegative(sum.CelsiusDays, "°C·d", nameof(sum));
        Sum = sum;
        DaysTooCold = Guard.AtLeast(daysTooCold, 0);
        DaysTooHot = Guard.AtLeast(daysTooHot, 0);
        if (elapsed is null != partOfDay is null)
            throw new ArgumentException("partOfDay was given without a time elapsed, or the other way round; allowed: both or neither.", nameof(partOfDay));
        if (elapsed is Duration time && partOfDay is Ratio part)
        {
            Guard.NotNegative(Boundary.Days(time), "days", nameof(elapsed));
            Guard.Within(Boundary.Fraction(part) * 100, 0, 100, "%", nameof(partOfDay));
            Guard.AtLeast(days, 1);
            Elapsed = HouseUnits.Normalise(time);
            PartOfDay = HouseUnits.Normalise(part);
        }
    }

    /// <summary>What the seed needs.</summary>
    public GerminationNeed Need { get; }

    /// <summary>The day of sowing.</summary>
    public DateOnly Sown { get; }

    /// <summary>The days counted: to the day that met the need, or all there were.</summary>
    public int Days { get; }

    /// <summary>The thermal time of those days.</summary>
    public ThermalTime Sum { get; }

    /// <summary>How many of them were at or below the base.</summary>
    public int DaysTooCold { get; }

    /// <summary>How many of them were at or above the ceiling.</summary>
    public int DaysTooHot { get; }

    /// <summary>The time from the start of the day of sowing until the need was met; <see langword="null"/> where it was not.</summary>
    public Duration? Elapsed { get; }

    /// <summary>The part of the last day that it took; <see langword="null"/> where the need was not met.</summary>
    public Ratio? PartOfDay { get; }

    /// <summary>The day on which the need was met; <see langword="null"/> where it was not.</summary>
    [JsonIgnore]
    public DateOnly? Reached => Elapsed is null ? null : Sown.AddDays(Days - 1);

    /// <summary>The part of the need that is met, 100 % where it is.</summary>
    [JsonIgnore]
    public Ratio Progress => Ratio.FromPercent(Elapsed is null ? Math.Min(100, Sum.CelsiusDays / Need.Middle.CelsiusDays * 100) : 100);

    /// <summary>What to take care of.</summary>
    [JsonIgnore]
    public IReadOnlyList<Caution> Cautions => ValueList<Caution>.Of(Need.Cautions());

    /// <summary>The progress in metric units and invariant culture.</summary>
    /// <returns>For instance <c>onion, sown 2025-04-01: germination of 50 % on 2025-04-09, 50 % into the day</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The progress as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The plant, the day of sowing, and the day or how far it has come.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new(ToString(style))
    {
        Rows =
        [
            new DisplayRow("thermal time", $"{QuantityText.Of(Sum, style)} of {QuantityText.Of(Need.Middle, style)}"),
            new DisplayRow("days", QuantityText.Of(Days, style)),
            new DisplayRow("too cold", QuantityText.Of(DaysTooCold, style)),
            new DisplayRow("too hot", QuantityText.Of(DaysTooHot, style)),
            .. Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Need.Source.ToString()),
        ],
    };

    private string ToString(TextStyle style)
    {
        string outcome = Reached is DateOnly date
            ? $"{Need.StageAndShare(style)} on {QuantityText.Of(date, style)}, {QuantityText.Of(PartOfDay!, style)} into the day"
            : $"no {Need.StageAndShare(style)} in {QuantityText.Of(Days, style)} days, {QuantityText.Of(Progress, style)} of the way";
        return $"{Need.Crop}, sown {QuantityText.Of(Sown, style)}: {outcome}";
    }
}
