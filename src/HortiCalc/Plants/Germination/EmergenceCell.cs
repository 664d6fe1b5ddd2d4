using HortiCalc.Display;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>One cell of a table of emergence: a soil temperature, and what came of seed there.</summary>
/// <remarks>Immutable; equal when all members are equal.</remarks>
public sealed record EmergenceCell : IFormattable
{
    /// <summary>Holds a cell.</summary>
    /// <param name="soil">The soil temperature, from -60 to 90 °C.</param>
    /// <param name="finding">Days, no germination, or not tested.</param>
    /// <param name="low">The days, or the low end of their range; <see langword="null"/> where the finding is not days.</param>
    /// <param name="high">The high end of the range; the same as the low end where one number is printed.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The temperature is out of range, the finding is <see cref="EmergenceFinding.Uncertain"/> or none of the defined ones, a time is not greater
    /// than 0, or the ends are out of order.
    /// </exception>
    /// <exception cref="ArgumentException">Days are missing where seedlings come up, or given where they do not.</exception>
    public EmergenceCell(Temperature soil, EmergenceFinding finding, Duration? low = null, Duration? high = null)
    {
        SoilCelsius = SeedbedTemperature.Celsius(soil, nameof(soil));
        Soil = HouseUnits.Normalise(soil);
        Finding = Guard.Defined(finding);
        if (finding == EmergenceFinding.Uncertain)
            throw new ArgumentOutOfRangeException(nameof(finding), "finding was Uncertain; allowed in a table: Emerges, NoGermination, NotTested.");
        bool emerges = finding == EmergenceFinding.Emerges;
        if (low.HasValue != emerges || high.HasValue != emerges)
            throw new ArgumentException($"low or high did not suit the finding, {finding}; allowed: both where seedlings come up, else neither.", nameof(low));
        if (low is Duration shortest && high is Duration longest)
        {
            LowDays = Guard.Positive(Boundary.Days(shortest), "days", nameof(low));
            HighDays = Guard.AtLeast(Boundary.Days(longest), LowDays, "days", nameof(high));
            Low = HouseUnits.Normalise(shortest);
            High = HouseUnits.Normalise(longest);
        }
    }

    /// <summary>The soil temperature.</summary>
    public Temperature Soil { get; }

    /// <summary>Days, no germination, or not tested.</summary>
    public EmergenceFinding Finding { get; }

    /// <summary>The days, or the low end of their range; <see langword="null"/> where the finding is not days.</summary>
    public Duration? Low { get; }

    /// <summary>The high end of the range; the same as <see cref="Low"/> where one number is printed.</summary>
    public Duration? High { get; }

    internal double SoilCelsius { get; }

    internal double LowDays { get; }

    internal double HighDays { get; }

    /// <summary>The cell in °C and invariant culture.</summary>
    /// <returns>For instance <c>15 °C: 24 days</c>.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The cell as text.</summary>
    /// <param name="format"><c>M</c> or nothing for °C, <c>U</c> for °F.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The temperature and the finding.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    internal static string Words(EmergenceFinding finding) => finding switch
    {
        EmergenceFinding.NoGermination => "no germination",
        EmergenceFinding.NotTested => "not tested",
        EmergenceFinding.Uncertain => "between germination and none",
        _ => "emerges",
    };

    private string ToString(TextStyle style)
    {
        string finding = Low is not Duration low ? Words(Finding)
            : LowDays == HighDays ? QuantityText.Of(low, style)
            : $"{QuantityText.Of(low, style)} to {QuantityText.Of(High!, style)}";
        return $"{QuantityText.Of(Soil, style)}: {finding}";
    }
}
