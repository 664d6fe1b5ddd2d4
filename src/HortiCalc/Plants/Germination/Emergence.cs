using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>Days until seedlings come up, read from published tables by soil temperature.</summary>
/// <remarks>
/// Between two printed temperatures the rate, one divided by the days, is taken to run straight, because it nearly does below the optimum
/// (that is what thermal time says) while days do not: a straight line through the days would be late everywhere between. Nothing is read
/// between a printed number and a cell without one, nor beyond the table.
/// </remarks>
public static class Emergence
{
    /// <summary>What a table says at a soil temperature.</summary>
    /// <param name="soil">The soil temperature at the depth of the seed, within the table.</param>
    /// <param name="table">The table of a crop, as from <see cref="EmergenceTables"/>.</param>
    /// <returns>
    /// The days, or that none germinates, or that the table does not say; where the source prints a range, so does the reading, with its middle
    /// as the value.
    /// </returns>
    /// <exception cref="ArgumentNullException">The table is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the table.</exception>
    /// <example><code>
    /// EmergenceTable onion = EmergenceTables.Named("knott-emergence-days", "onion");
    /// EmergenceReading reading = Emergence.At(Temperature.FromDegreesFahrenheit(59), onion);  // 7 days
    /// </code></example>
    public static EmergenceReading At(Temperature soil, EmergenceTable table)
    {
        Guard.NotNull(table);
        double celsius = SeedbedTemperature.Celsius(soil, nameof(soil));
        Method method = table.MethodFor(nameof(soil));
        method.Require(celsius, "°C", nameof(soil));

        (EmergenceCell below, EmergenceCell above, double part) = Around(celsius, table.Cells);
        EmergenceFinding finding = Between(below.Finding, above.Finding);
        if (finding != EmergenceFinding.Emerges)
            return new EmergenceReading(table.Crop, soil, finding, table.Source);

        double lowDays = ByRate(below.LowDays, above.LowDays, part);
        double highDays = ByRate(below.HighDays, above.HighDays, part);
        Estimate<Duration> days = new(
            Duration.FromDays(lowDays + (highDays - lowDays) / 2),
            method,
            lowDays < highDays ? new EstimateRange<Duration>(Duration.FromDays(lowDays), Duration.FromDays(highDays), "range printed by the source") : null,
            cautions: [GerminationEvidence.HalfInchDeep]);
        return new EmergenceReading(table.Crop, soil, finding, table.Source, days);
    }

    /// <summary>What every source says of a crop at a soil temperature, side by side.</summary>
    /// <param name="soil">The soil temperature at the depth of the seed.</param>
    /// <param name="crop">The crop in plain English, capitals or not.</param>
    /// <returns>A reading for each table that reaches the temperature; none where no source has the crop.</returns>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not from -60 to 90 °C.</exception>
    public static IReadOnlyList<EmergenceReading> Compare(Temperature soil, string crop)
    {
        double celsius = SeedbedTemperature.Celsius(soil, nameof(soil));
        return ValueList<EmergenceReading>.Of(EmergenceTables.Of(crop)
            .Where(table => celsius >= table.Cells[0].SoilCelsius && celsius <= table.Cells[^1].SoilCelsius)
            .Select(table => At(soil, table)));
    }

    /// <summary>The cells on either side of a temperature within the table, and how far it is from the first to the second; twice the same cell on one.</summary>
    private static (EmergenceCell Below, EmergenceCell Above, double Part) Around(double celsius, IReadOnlyList<EmergenceCell> cells)
    {
        int i = 0;
        while (cells[i].SoilCelsius < celsius)
            i++;
        return cells[i].SoilCelsius == celsius
            ? (cells[i], cells[i], 0)
            : (cells[i - 1], cells[i], (celsius - cells[i - 1].SoilCelsius) / (cells[i].SoilCelsius - cells[i - 1].SoilCelsius));
    }

    private static EmergenceFinding Between(EmergenceFinding below, EmergenceFinding above) => (below, above) switch
    {
        _ when below == above => below,
        _ when below == EmergenceFinding.NotTested || above == EmergenceFinding.NotTested => EmergenceFinding.NotTested,
        _ => EmergenceFinding.Uncertain,
    };

    // A printed number comes out as printed, to the last digit.
    private static double ByRate(double daysBelow, double daysAbove, double part) =>
        part == 0 || daysBelow == daysAbove ? daysBelow : 1 / ((1 - part) / daysBelow + part / daysAbove);
}
