using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>A published rule for the cold: what to do with which plants once it has been so cold for so many days.</summary>
/// <remarks>Immutable; equal when all members are equal. <see cref="WinterRules"/> has the published ones.</remarks>
/// <example><code>
/// DailyTemperatures days = DailyTemperatures.FromMinima(
///     new DateOnly(2026, 9, 20), [12, 9, 8, 6.5, 9], TemperatureUnit.DegreeCelsius);
/// DateOnly? bringIn = WinterRules.MoveBegoniaIndoors.FirstDue(days, from: days.Start); // 23 September
/// </code></example>
public sealed record WinterRule : IFormattable
{
    /// <summary>Describes a rule.</summary>
    /// <param name="plants">The plants it is for.</param>
    /// <param name="action">What to do, as in <c>move indoors</c>.</param>
    /// <param name="reading">The temperature it is read by.</param>
    /// <param name="atOrBelow">The temperature at or below which a day counts.</param>
    /// <param name="daysInARow">How many such days in a row it takes, 1 or more.</param>
    /// <param name="source">Where it is stated.</param>
    /// <exception cref="ArgumentNullException">The source is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The reading is none of the defined ones, the temperature none of the air, or the days are fewer than 1.</exception>
    public WinterRule(string plants, string action, WinterReading reading, Temperature atOrBelow, int daysInARow, Source source)
    {
        Plants = Guard.NotBlank(plants);
        Action = Guard.NotBlank(action);
        Reading = Guard.Defined(reading);
        Guard.Within(Boundary.Celsius(atOrBelow), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", nameof(atOrBelow));
        AtOrBelow = HouseUnits.Normalise(atOrBelow);
        DaysInARow = Guard.AtLeast(daysInARow, 1);
        Source = Guard.NotNull(source);
    }

    /// <summary>The plants it is for.</summary>
    public string Plants { get; }

    /// <summary>What to do.</summary>
    public string Action { get; }

    /// <summary>The temperature it is read by.</summary>
    public WinterReading Reading { get; }

    /// <summary>The temperature at or below which a day counts.</summary>
    public Temperature AtOrBelow { get; }

    /// <summary>How many such days in a row it takes.</summary>
    public int DaysInARow { get; }

    /// <summary>Where it is stated.</summary>
    public Source Source { get; }

    /// <summary>The first day on which the rule asks for its action.</summary>
    /// <param name="days">
    /// Daily temperatures of what the rule is read by: the air for <see cref="WinterReading.NightMinimum"/>, the soil for
    /// <see cref="WinterReading.SoilAllDay"/>. A forecast may be joined to them: the rule is best followed the day before.
    /// </param>
    /// <param name="from">The first day to look at; a day of the series.</param>
    /// <returns>The last of the first days in a row that count, or <see langword="null"/> where there are none. A missing day breaks the row.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The first day is not in the series.</exception>
    public DateOnly? FirstDue(DailyTemperatures days, DateOnly from)
    {
        Guard.NotNull(days);
        ReadOnlySpan<double> celsius = Reading == WinterReading.NightMinimum ? days.MinimaCelsius : days.MaximaCelsius;
        double limitCelsius = Boundary.Celsius(AtOrBelow) + FreezeRecord.HalfATenthCelsius;
        int row = 0;
        for (int day = DayRange.IndexOf(from, days.Start, days.End, nameof(from)); day < celsius.Length; day++)
        {
            row = celsius[day] <= limitCelsius ? row + 1 : 0;
            if (row == DaysInARow)
                return days.Start.AddDays(day);
        }

        return null;
    }

    /// <summary>The rule in metric units and invariant culture.</summary>
    /// <returns>Plants, action, temperature and source.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The rule as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>Plants, action, temperature and source.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    private string ToString(TextStyle style)
    {
        string reading = Reading == WinterReading.NightMinimum ? "night" : "soil at 10 cm all day";
        string days = DaysInARow == 1 ? "" : $", {QuantityText.Of(DaysInARow, style)} days in a row";
        return $"{Plants}: {Action} once the {reading} is at or below {QuantityText.Of(AtOrBelow, style)}{days} [{Source}]";
    }
}
