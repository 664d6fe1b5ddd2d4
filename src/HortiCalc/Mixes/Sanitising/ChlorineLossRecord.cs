using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What a source says is left of the strength of bleach after a time.</summary>
public sealed record ChlorineLossRecord
{
    /// <summary>Describes a record.</summary>
    /// <param name="key">A short stable name.</param>
    /// <param name="conditions">Of what and how kept.</param>
    /// <param name="time">The time; more than 0.</param>
    /// <param name="low">The least that is left; from 0 to 100 %.</param>
    /// <param name="high">The most that is left; from low to 100 %.</param>
    /// <param name="isDiluted">Whether the bleach was diluted for use.</param>
    /// <param name="source">Who says so.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what is allowed.</exception>
    public ChlorineLossRecord(string key, string conditions, Duration time, Ratio low, Ratio high, bool isDiluted, Source source)
    {
        Key = Guard.NotBlank(key);
        Conditions = Guard.NotBlank(conditions);
        Guard.Positive(Boundary.Days(time), "days", nameof(time));
        double lowPercent = Guard.Within(Boundary.Fraction(low) * 100, 0, 100, "%", nameof(low));
        Guard.Within(Boundary.Fraction(high) * 100, lowPercent, 100, "%", nameof(high));
        Time = HouseUnits.Normalise(time);
        Low = HouseUnits.Normalise(low);
        High = HouseUnits.Normalise(high);
        IsDiluted = isDiluted;
        Source = Guard.NotNull(source);
    }

    /// <summary>A short stable name.</summary>
    public string Key { get; }

    /// <summary>Of what and how kept.</summary>
    public string Conditions { get; }

    /// <summary>The time.</summary>
    public Duration Time { get; }

    /// <summary>The least that is left.</summary>
    public Ratio Low { get; }

    /// <summary>The most that is left.</summary>
    public Ratio High { get; }

    /// <summary>Whether the bleach was diluted for use.</summary>
    public bool IsDiluted { get; }

    /// <summary>Who says so.</summary>
    public Source Source { get; }

    /// <summary>The record in invariant culture.</summary>
    /// <returns>For instance <c>in store at 24 °C, 730 days: 0 % to 50 % left</c>.</returns>
    public override string ToString() =>
        $"{Conditions}, {QuantityText.Of(Time, TextStyle.Default)}: {MixAmount.Span(Low, High, TextStyle.Default)} left [{Source}]";
}
