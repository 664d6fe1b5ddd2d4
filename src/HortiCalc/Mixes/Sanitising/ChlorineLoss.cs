using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>What bleach loses in store and after dilution, as several sources print it; they disagree, so that there is no one constant.</summary>
/// <remarks>
/// Diluted bleach halves in two hours by one source and serves for a day by another: soil, light and warmth decide. In store the loss
/// grows with the square of the strength and two- to fourfold with each 10 °C.
/// </remarks>
/// <example><code>
/// Estimate&lt;Ratio&gt; left = ChlorineLoss.InStore(Duration.FromDays(14), Temperature.FromDegreesFahrenheit(90));
/// Console.WriteLine(left.Value.Percent);   // 79: of 12.5 % pool bleach after two weeks in a hot shed
/// </code></example>
public static class ChlorineLoss
{
    private static readonly double[] Fahrenheit = [70, 75, 80, 85, 90, 95, 100];

    // 1 day to 6 days, 1 to 3 weeks, 1 to 6 months of a twelfth of 365 days.
    private static readonly double[] Days = [0, 1, 2, 3, 4, 5, 6, 7, 14, 21, .. Enumerable.Range(1, 6).Select(months => months * 365.0 / 12)];

    // Trade per cent left of 12.5, as printed; a row a time, a column a temperature.
    private static readonly double[][] TradePercent =
    [
        [12.50, 12.50, 12.50, 12.50, 12.50, 12.50, 12.50],
        [12.44, 12.41, 12.37, 12.31, 12.22, 12.10, 11.92],
        [12.39, 12.33, 12.25, 12.13, 11.97, 11.74, 11.42],
        [12.33, 12.25, 12.13, 11.96, 11.73, 11.41, 10.99],
        [12.28, 12.17, 12.02, 11.80, 11.51, 11.12, 10.61],
        [12.22, 12.09, 11.91, 11.65, 11.30, 10.85, 10.28],
        [12.17, 12.02, 11.80, 11.50, 11.10, 10.60, 9.98],
        [12.12, 11.94, 11.69, 11.36, 10.92, 10.37, 9.71],
        [11.78, 11.46, 11.04, 10.51, 9.87, 9.13, 8.33],
        [11.47, 11.04, 10.50, 9.85, 9.10, 8.29, 7.45],
        [11.11, 10.57, 9.93, 9.18, 8.36, 7.51, 6.68],
        [10.10, 9.33, 8.49, 7.60, 6.73, 5.90, 5.14],
        [9.28, 8.40, 7.48, 6.57, 5.72, 4.95, 4.27],
        [8.67, 7.74, 6.81, 5.93, 5.13, 4.42, 3.79],
        [8.18, 7.24, 6.33, 5.48, 4.72, 4.05, 3.47],
        [7.78, 6.84, 5.95, 5.13, 4.41, 3.78, 3.23],
    ];

    private static readonly Method StorageTable = new(
        "bleach.storage-table",
        "table of pool bleach in store, computed by its author",
        SanitisingSources.StorageModel,
        new Domain(
            "pool bleach of 12.5 trade per cent in the dark; weaker bleach loses less",
            new DomainLimit("time", 0, 182.5, "days"),
            new DomainLimit("store", 21.111111111, 37.777777778, "°C")));

    private static readonly Method HalfLife = new(
        "bleach.half-life", "halving at a steady rate", MixSources.UniversityOfMassachusetts, new Domain("diluted bleach; the half-life is that of a source"));

    /// <summary>What sources print, in store and diluted.</summary>
    public static IReadOnlyList<ChlorineLossRecord> Published { get; } = ValueList<ChlorineLossRecord>.Of(
    [
        Record("diluted-two-hours", "diluted one part to nine for pots and tools", Duration.FromHours(2), 50, 50, true, MixSources.UniversityOfMassachusetts),
        Record("cold-two-years", "in store at 4 °C", Duration.FromDays(730), 100, 100, false, SanitisingSources.HazardousSubstances),
        Record("room-two-years", "in store at 24 °C", Duration.FromDays(730), 0, 50, false, SanitisingSources.HazardousSubstances),
        Record("room-a-year", "in store, household bleach", Duration.FromDays(365), 80, 90, false, SanitisingSources.YearlyLoss),
    ]);

    /// <summary>How long diluted bleach may be used for disinfecting, by the shortest and the longest of the sources.</summary>
    public static Estimate<Duration> UseWithin { get; } = new(
        Duration.FromHours(2),
        new Method("bleach.use-within", "time of use of diluted bleach", SanitisingSources.WithinADay, new Domain("diluted bleach kept in the dark")),
        new EstimateRange<Duration>(
            Duration.FromHours(2), Duration.FromHours(24), "from the source that sees it halved in two hours to the one that allows a day"),
        cautions: [MixCautions.MakeFresh]);

    /// <summary>What is left of pool bleach of 12.5 trade per cent after a time in store.</summary>
    /// <param name="time">From 0 to half a year.</param>
    /// <param name="store">The temperature of the store, from 70 to 100 °F (21 to 38 °C).</param>
    /// <returns>The share left, between the nearest figures of the table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time or the temperature is outside the table.</exception>
    public static Estimate<Ratio> InStore(Duration time, Temperature store)
    {
        double days = StorageTable.Require(Boundary.Days(time), "days", nameof(time));
        double celsius = StorageTable.Require(Math.Round(Boundary.Celsius(store), 9, MidpointRounding.ToEven), "°C", nameof(store));
        double degreesFahrenheit = Math.Clamp(Boundary.FahrenheitFromCelsius(celsius), 70, 100);
        (int row, double down) = Place(Days, days);
        (int column, double across) = Place(Fahrenheit, degreesFahrenheit);
        double upper = Between(TradePercent[row][column], TradePercent[row][column + 1], across);
        double lower = Between(TradePercent[row + 1][column], TradePercent[row + 1][column + 1], across);
        return new Estimate<Ratio>(
            Ratio.FromPercent(100 * Between(upper, lower, down) / TradePercent[0][0]), StorageTable, cautions: [MixCautions.FadesInStore]);
    }

    /// <summary>What is left after a time when a source gives a half-life.</summary>
    /// <param name="time">The time since dilution; 0 or more.</param>
    /// <param name="halfLife">The half-life that the source gives, such as 2 hours; more than 0.</param>
    /// <returns>The share left: half after one half-life, a quarter after two.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside what is allowed.</exception>
    public static Estimate<Ratio> AfterDilution(Duration time, Duration halfLife)
    {
        double days = Guard.NotNegative(Boundary.Days(time), "days", nameof(time));
        double halfLifeDays = Guard.Positive(Boundary.Days(halfLife), "days", nameof(halfLife));
        return new Estimate<Ratio>(
            Ratio.FromPercent(100 * Math.Pow(0.5, days / halfLifeDays)), HalfLife, cautions: [MixCautions.MakeFresh]);
    }

    private static double Between(double first, double second, double share) => first + ((second - first) * share);

    private static (int Index, double Share) Place(double[] marks, double value)
    {
        int index = 0;
        while (index < marks.Length - 2 && value > marks[index + 1])
            index++;
        return (index, (value - marks[index]) / (marks[index + 1] - marks[index]));
    }

    private static ChlorineLossRecord Record(
        string key, string conditions, Duration time, double lowPercent, double highPercent, bool isDiluted, Source source) =>
        new(key, conditions, time, Ratio.FromPercent(lowPercent), Ratio.FromPercent(highPercent), isDiluted, source);
}
