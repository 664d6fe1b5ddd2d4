using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>A date of a forecast with its level: the chance that the requirement is met by that day.</summary>
/// <remarks>Immutable; equal when level and date are.</remarks>
public sealed record ForecastDate : IFormattable
{
    /// <summary>Holds a date and its level.</summary>
    /// <param name="level">The chance that the requirement is met by the date, from 0 to 100 %.</param>
    /// <param name="date">The date; <see langword="null"/> where that chance is not reached within the season.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not from 0 to 100 %.</exception>
    public ForecastDate(Ratio level, DateOnly? date)
    {
        Guard.Within(Boundary.Fraction(level) * 100, 0, 100, "%", nameof(level));
        Level = HouseUnits.Normalise(level);
        Date = date;
    }

    /// <summary>The chance that the requirement is met by the date.</summary>
    public Ratio Level { get; }

    /// <summary>The date; <see langword="null"/> where that chance is not reached within the season.</summary>
    public DateOnly? Date { get; }

    /// <summary>The level and the date in invariant culture.</summary>
    /// <returns>For instance <c>10 %: 2026-07-02</c>, or <c>90 %: not reached</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The level and the date as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones; there is no difference here.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The level and the date.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal string ToString(TextStyle style) => $"{QuantityText.Of(Level, style)}: {HeatForecastText.Of(Date, style)}";
}
