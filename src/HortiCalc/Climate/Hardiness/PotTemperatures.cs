using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The temperature of the medium in a pot from hour to hour.</summary>
/// <remarks>Immutable; equal when both courses are equal.</remarks>
[TypeFormatterSource(typeof(DisplayFormatters))]
public sealed record PotTemperatures : IFormattable, IDisplayable
{
    /// <summary>Puts two courses together.</summary>
    /// <param name="wall">At the wall, where most young roots are; half-way up, or at the bottom of a pot on the ground.</param>
    /// <param name="core">On the axis at the same height.</param>
    /// <exception cref="ArgumentNullException">A course is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">The courses have other hours, or hours are missing.</exception>
    public PotTemperatures(Estimate<HourlyTemperatures> wall, Estimate<HourlyTemperatures> core)
    {
        Wall = Guard.NotNull(wall);
        Core = Guard.NotNull(core);
        if (wall.Value.Start != core.Value.Start || wall.Value.Count != core.Value.Count)
            throw new ArgumentException($"core, {core.Value}, had other hours than wall, {wall.Value}; allowed: the same.", nameof(core));
        if (wall.Value.MissingCount + core.Value.MissingCount > 0)
            throw new ArgumentException("wall and core had missing hours; allowed: none.", nameof(wall));
    }

    /// <summary>At the wall, where most young roots are.</summary>
    public Estimate<HourlyTemperatures> Wall { get; }

    /// <summary>On the axis, the last place to cool.</summary>
    public Estimate<HourlyTemperatures> Core { get; }

    /// <summary>The lowest temperature at the wall.</summary>
    public Temperature LowestAtWall => Lowest(Wall.Value);

    /// <summary>The lowest temperature in the core.</summary>
    public Temperature LowestInCore => Lowest(Core.Value);

    /// <summary>How many of the hours find the wall at or below a temperature, such as one that kills roots.</summary>
    /// <param name="temperature">A temperature.</param>
    /// <returns>The number of hours.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not finite.</exception>
    public int HoursAtWallAtOrBelow(Temperature temperature)
    {
        double celsius = Guard.Finite(Boundary.Celsius(temperature), "°C", nameof(temperature));
        int hours = 0;
        foreach (double hourCelsius in Wall.Value.Celsius)
            hours += hourCelsius <= celsius ? 1 : 0;
        return hours;
    }

    /// <summary>The temperatures in metric units and invariant culture.</summary>
    /// <returns>The hours and the lowest temperatures.</returns>
    public override string ToString() => ToString(TextStyle.Default);

    /// <summary>The temperatures as one line of text.</summary>
    /// <param name="format"><c>M</c> or nothing for metric units, <c>U</c> for US customary ones.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>The hours and the lowest temperatures.</returns>
    /// <exception cref="FormatException">The format is another one.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider) => ToString(TextStyle.Parse(format, formatProvider));

    DisplayBlock IDisplayable.ToDisplay(TextStyle style) => new("Medium in a pot")
    {
        Rows =
        [
            new DisplayRow("from", HourRange.Text(Wall.Value.Start)),
            new DisplayRow("to", HourRange.Text(Wall.Value.End)),
            new DisplayRow("lowest at the wall", QuantityText.Of(LowestAtWall, style)),
            new DisplayRow("lowest in the core", QuantityText.Of(LowestInCore, style)),
            .. Wall.Cautions.Select(caution => new DisplayRow(caution.LevelWord, caution.Sentence)),
            new DisplayRow("source", Wall.Method.Source.ToString()),
        ],
    };

    private string ToString(TextStyle style) =>
        $"{HourRange.Text(Wall.Value.Start)} to {HourRange.Text(Wall.Value.End)}: lowest {QuantityText.Of(LowestAtWall, style)} at the wall, "
        + $"{QuantityText.Of(LowestInCore, style)} in the core";

    private static Temperature Lowest(HourlyTemperatures hours)
    {
        double lowestCelsius = double.PositiveInfinity;
        foreach (double hourCelsius in hours.Celsius)
            lowestCelsius = Math.Min(lowestCelsius, hourCelsius);
        return Temperature.FromDegreesCelsius(lowestCelsius);
    }
}
