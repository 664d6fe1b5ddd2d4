using System.Globalization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Plants;

/// <summary>When seed germinates or seedlings come up, by the thermal time they need.</summary>
/// <remarks>
/// The day's progress is the degrees that its temperature counts for, by the need's <see cref="GerminationResponse"/>, divided by the thermal
/// time needed; the progresses of days add up. Temperature is that of the soil at the depth of the seed, except where the need says air.
/// Published needs are in <see cref="GerminationNeeds"/>; published tables of days are read by <see cref="Emergence"/>.
/// </remarks>
public static class Germination
{
    private const string PrintedRange = "printed range of the thermal time";

    /// <summary>The part of the need that one day at a constant temperature meets: the rate of germination.</summary>
    /// <param name="soil">The temperature, from -60 to 90 °C.</param>
    /// <param name="need">What the seed needs.</param>
    /// <returns>The part, 0 at and below the base and at and above the ceiling; 25 % where it takes four days.</returns>
    /// <exception cref="ArgumentNullException">The need is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range, or above what the need was found to hold for.</exception>
    public static Estimate<Ratio> ProgressPerDay(Temperature soil, GerminationNeed need)
    {
        Guard.NotNull(need);
        double degrees = Degrees(soil, need);
        EstimateRange<Ratio>? range = need.Low == need.High
            ? null
            : new EstimateRange<Ratio>(Part(degrees, need.High), Part(degrees, need.Low), PrintedRange);
        return new Estimate<Ratio>(Part(degrees, need.Middle), need.MethodFor(nameof(soil)), range, cautions: need.Cautions());
    }

    /// <summary>The time to germination or emergence at a constant temperature.</summary>
    /// <param name="soil">The temperature, from -60 to 90 °C.</param>
    /// <param name="need">What the seed needs.</param>
    /// <returns>
    /// The time, to the need's stage and share; <see langword="null"/> where there is no germination: at and below the base, at and above the
    /// ceiling, and so near to them that the rate is too small to tell from none. A range where the source prints one.
    /// </returns>
    /// <exception cref="ArgumentNullException">The need is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range, or above what the need was found to hold for.</exception>
    /// <example><code>
    /// Estimate&lt;Duration&gt;? time = Germination.Time(Temperature.FromDegreesCelsius(22.5), GerminationNeeds.Onion); // 4 days to 50 %
    /// Estimate&lt;Duration&gt;? never = Germination.Time(Temperature.FromDegreesCelsius(2), GerminationNeeds.Onion);  // null: no germination
    /// </code></example>
    public static Estimate<Duration>? Time(Temperature soil, GerminationNeed need)
    {
        Guard.NotNull(need);
        double degrees = Degrees(soil, need);
        double slowestDays = need.High.CelsiusDays / degrees;
        if (!double.IsFinite(slowestDays))
            return null;
        EstimateRange<Duration>? range = need.Low == need.High
            ? null
            : new EstimateRange<Duration>(
                Duration.FromDays(need.Low.CelsiusDays / degrees), Duration.FromDays(slowestDays), PrintedRange);
        return new Estimate<Duration>(
            Duration.FromDays(need.Middle.CelsiusDays / degrees), need.MethodFor(nameof(soil)), range, cautions: need.Cautions());
    }

    /// <summary>The progress of seed over a run of days of known temperature, and when it has come up.</summary>
    /// <param name="dailyMeans">The mean temperature of each day, the first that of the day of sowing; every day must be there.</param>
    /// <param name="unit">The unit of the temperatures.</param>
    /// <param name="sown">The day of sowing, counted as a whole day.</param>
    /// <param name="need">What the seed needs.</param>
    /// <returns>
    /// The progress, with the time and the part of the day where the need is met; the days after that are not read. A day at or below the base,
    /// or at or above the ceiling, adds nothing and is counted. Where the source prints a range, the need is its middle.
    /// </returns>
    /// <remarks>
    /// The mean of a day stands for the day: where a warm day crosses the base or the optimum, hours of soil temperature tell more. The part of
    /// the day supposes that its progress comes evenly.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The need is <see langword="null"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A temperature is missing, from below -60 or above 90 °C, or above what the need was found to hold for; or a date is past the calendar.
    /// </exception>
    /// <example><code>
    /// GerminationProgress onions = Germination.Over(
    ///     [8.5, 9.5, 10.5, 11.5, 12.5, 12.5, 12.5, 12.5, 12.5, 12.5],
    ///     TemperatureUnit.DegreeCelsius,
    ///     new DateOnly(2025, 4, 1),
    ///     GerminationNeeds.Onion);
    /// Console.WriteLine(onions);
    /// </code></example>
    public static GerminationProgress Over(ReadOnlySpan<double> dailyMeans, TemperatureUnit unit, DateOnly sown, GerminationNeed need)
    {
        Guard.NotNull(need);
        if (dailyMeans.Length > DateOnly.MaxValue.DayNumber - sown.DayNumber + 1)
        {
            throw new ArgumentOutOfRangeException(
                nameof(sown), $"sown was {Text(sown)}; allowed: a day with {dailyMeans.Length.ToString(CultureInfo.InvariantCulture)} days of the calendar from it.");
        }

        double needed = need.Middle.CelsiusDays;
        double sum = 0;
        int tooCold = 0;
        int tooHot = 0;
        for (int day = 0; day < dailyMeans.Length; day++)
        {
            double celsius = DayCelsius(dailyMeans[day], unit, sown.AddDays(day), need, nameof(dailyMeans));
            double degrees = need.Response.Degrees(celsius, need.Temperatures);
            tooCold += celsius <= need.Temperatures.BaseCelsius ? 1 : 0;
            tooHot += celsius >= need.Temperatures.CeilingCelsius ? 1 : 0;
            if (sum + degrees < needed)
            {
                sum += degrees;
                continue;
            }

            double part = Math.Min(1, (needed - sum) / degrees);
            return new GerminationProgress(
                need,
                sown,
                day + 1,
                ThermalTime.FromCelsiusDays(sum + degrees),
                tooCold,
                tooHot,
                Duration.FromDays(day + part),
                Ratio.FromPercent(part * 100));
        }

        return new GerminationProgress(need, sown, dailyMeans.Length, ThermalTime.FromCelsiusDays(sum), tooCold, tooHot);
    }

    private static double Degrees(Temperature soil, GerminationNeed need)
    {
        double celsius = SeedbedTemperature.Celsius(soil, nameof(soil));
        need.MethodFor(nameof(soil)).Require(celsius, "°C", nameof(soil));
        return need.Response.Degrees(celsius, need.Temperatures);
    }

    private static Ratio Part(double degrees, ThermalTime needed) => Ratio.FromPercent(degrees / needed.CelsiusDays * 100);

    private static double DayCelsius(double value, TemperatureUnit unit, DateOnly date, GerminationNeed need, string parameter)
    {
        if (double.IsNaN(value))
        {
            throw new ArgumentOutOfRangeException(
                parameter, $"{parameter} on {Text(date)} was missing; allowed: a temperature for every day, from a neighbouring day or station where the own one failed.");
        }

        double highest = need.Highest is Temperature end ? Boundary.Celsius(end) : SeedbedTemperature.HighestCelsius;
        double celsius = double.IsInfinity(value) ? value : Boundary.Celsius(HouseUnits.Normalise(new Temperature(value, unit)));
        if (celsius >= SeedbedTemperature.LowestCelsius && celsius <= highest)
            return celsius;
        string reason = need.Highest is null ? "" : ", to which the need was found to hold";
        throw new ArgumentOutOfRangeException(
            parameter,
            $"{parameter} on {Text(date)} was {Guard.Number(celsius)} °C; allowed: from {Guard.Number(SeedbedTemperature.LowestCelsius)} to {Guard.Number(highest)} °C{reason}.");
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
