using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>The heat sums by which places for grapes are classed: Winkler's and Huglin's.</summary>
/// <remarks>
/// Both count above 10 °C over the growing season of the hemisphere. Winkler's takes the mean of the day; Huglin's gives its maximum more
/// weight and is multiplied by a coefficient for the longer days of higher latitudes.
/// </remarks>
public static class GrapeHeat
{
    private const double BaseCelsius = 10;

    private static readonly Source CaliforniaSummation = new(
        "winkler-limits",
        "California heat summation classes",
        "The Oxford Companion to Wine",
        2006,
        "https://app.ckbk.com/reference/wine05383c03s001e262e002/california-heat-summation");

    private static readonly Source HuglinClasses = new(
        "huglin-classes",
        "What is Huglin or heliothermal index (HI)?",
        "Plant Cell Technology",
        null,
        "https://plantct.com/ufaqs/what-is-huglin-or-heliothermal-index-hi/");

    private static readonly Method WinklerSum = new(
        "winkler.sum",
        "Winkler index, days below the base taken for zero",
        CaliforniaSummation,
        new Domain("grapes; 1 April to 31 October, south of the equator 1 October to 30 April"));

    private static readonly Method WinklerClasses = new(
        "winkler.regions", "Winkler regions", CaliforniaSummation, new Domain("sums over the season of the hemisphere"));

    private static readonly Method HuglinIndexClasses = new(
        "huglin.classes", "classes of the Huglin index", HuglinClasses, new Domain("sums over the season of the hemisphere"));

    private static readonly Method DayLengthCoefficient = new(
        "huglin.day-length",
        "day-length coefficient of the Huglin index, by steps of latitude",
        HuglinMethod.Copernicus,
        new Domain("printed for the north, taken for the south by the distance from the equator", new DomainLimit("latitude", -50, 50, "°")));

    private static readonly Caution DailyNotMonthly = new(
        "winkler.daily-or-monthly",
        CautionLevel.Note,
        "California's classes were set with sums of monthly means, which are a little smaller than this sum of days.",
        Source.CommonPractice("winkler-monthly", "heat summations of California are made from monthly means"));

    private static readonly Caution OuterLimitsDiffer = new(
        "winkler.outer-limits",
        CautionLevel.Note,
        "The printed outer limits differ between Celsius-days and Fahrenheit-days, and this sum lies between them: the other unit gives another region.",
        CaliforniaSummation);

    private static readonly Caution CoefficientUnclear = new(
        "huglin.coefficient-unclear",
        CautionLevel.Note,
        "No clear definition of the day-length coefficient exists: it is printed in steps of latitude, and other prints begin with 1.02 at 40°.",
        HuglinMethod.Copernicus);

    private static readonly Caution SouthByDistance = new(
        "huglin.south",
        CautionLevel.Note,
        "The day-length coefficient is printed for the north; the south takes that of the same distance from the equator.",
        HuglinMethod.Copernicus);

    // Upper ends. The encyclopedia prints 1500-2000, 2001-2500 and so on: a sum at a limit belongs to the cooler region, save at the lowest.
    private static readonly double[] RegionLimitsCelsiusDays = [850, 1111, 1389, 1667, 1944, 2222, 2700];
    private static readonly double[] RegionLimitsFahrenheitDays = [1500, 2000, 2500, 3000, 3500, 4000, 4900];
    private static readonly double[] ClassLimitsCelsiusDays = [1500, 1800, 2100, 2400, 3000];

    private static readonly CountingSeason WinklerNorth = new(new MonthDay(4, 1), new MonthDay(10, 31));
    private static readonly CountingSeason WinklerSouth = new(new MonthDay(10, 1), new MonthDay(4, 30));
    private static readonly CountingSeason HuglinNorth = new(new MonthDay(4, 1), new MonthDay(9, 30));
    private static readonly CountingSeason HuglinSouth = new(new MonthDay(10, 1), new MonthDay(3, 31));

    /// <summary>The season of Winkler's sum: 1 April to 31 October, in the south 1 October to 30 April.</summary>
    /// <param name="hemisphere">Which half of the earth the place lies on.</param>
    /// <returns>The season.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hemisphere is not one of the two.</exception>
    public static CountingSeason WinklerSeason(Hemisphere hemisphere) =>
        Guard.Defined(hemisphere) == Hemisphere.Northern ? WinklerNorth : WinklerSouth;

    /// <summary>The season of Huglin's sum: 1 April to 30 September, in the south 1 October to 31 March.</summary>
    /// <param name="hemisphere">Which half of the earth the place lies on.</param>
    /// <returns>The season.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The hemisphere is not one of the two.</exception>
    public static CountingSeason HuglinSeason(Hemisphere hemisphere) =>
        Guard.Defined(hemisphere) == Hemisphere.Northern ? HuglinNorth : HuglinSouth;

    /// <summary>Winkler's sum: the mean of each day above 10 °C, a day below taken for zero.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="span">The days to count; <see cref="WinklerSeason"/> has the published season.</param>
    /// <param name="missingDays">What is done about missing days; a day of the span outside the record is missing too.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentNullException">The days are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, or none is known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is no share.</exception>
    /// <example><code>
    /// DailyTemperatures days = DailyTemperatures.Create(
    ///     new DateOnly(2024, 7, 1), [15, 17, 14], [30, 32, 27], TemperatureUnit.DegreeCelsius);
    /// ClimateSum&lt;ThermalTime&gt; sum = GrapeHeat.Winkler(days, new DateSpan(days.Start, days.End)); // 37.5 °C·d
    /// Estimate&lt;WinklerRegion&gt; region = GrapeHeat.Region(ThermalTime.FromCelsiusDays(1400), WinklerLimits.Celsius); // II
    /// </code></example>
    public static ClimateSum<ThermalTime> Winkler(
        DailyTemperatures days, DateSpan span, MissingDays missingDays = MissingDays.LeftOut, Ratio? maximumMissing = null)
    {
        CountedDays counted = CountedDays.Of(days, span, missingDays, maximumMissing);
        double celsiusDays = counted.Sum((minimum, maximum, _) => Math.Max(0, (minimum + maximum) / 2 - BaseCelsius));
        return counted.Result(ThermalTime.FromCelsiusDays(celsiusDays), "", WinklerSum, DailyNotMonthly);
    }

    /// <summary>The Winkler region of a sum.</summary>
    /// <param name="sum">The sum over the season, 0 or more.</param>
    /// <param name="limits">Which printed limits decide. A sum at a limit belongs to the cooler region, at the lowest limit to region Ia.</param>
    /// <returns>The region.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sum is negative, or the limits are not one of the two sets.</exception>
    public static Estimate<WinklerRegion> Region(ThermalTime sum, WinklerLimits limits)
    {
        Guard.NotNegative(sum.CelsiusDays, "°C·d", nameof(sum));
        WinklerRegion celsius = RegionWithin(sum.CelsiusDays, RegionLimitsCelsiusDays);
        WinklerRegion fahrenheit = RegionWithin(sum.FahrenheitDays, RegionLimitsFahrenheitDays);
        return new Estimate<WinklerRegion>(
            Guard.Defined(limits) == WinklerLimits.Celsius ? celsius : fahrenheit,
            WinklerClasses,
            cautions: IsOuter(celsius) != IsOuter(fahrenheit) ? [OuterLimitsDiffer] : []);
    }

    /// <summary>Huglin's index: half of mean and maximum above 10 °C, summed, times the day-length coefficient of the latitude.</summary>
    /// <param name="days">The daily temperatures.</param>
    /// <param name="span">The days to count; <see cref="HuglinSeason"/> has the published season.</param>
    /// <param name="latitude">The latitude of the place, south negative, from -50 to 50°.</param>
    /// <param name="method">Whether a day below the base takes from the sum.</param>
    /// <param name="missingDays">What is done about missing days; a day of the span outside the record is missing too.</param>
    /// <param name="maximumMissing">The largest share of missing days that is accepted, from 0 to 100 %; <see langword="null"/> for 5 %.</param>
    /// <returns>The index.</returns>
    /// <exception cref="ArgumentNullException">The days or the method are <see langword="null"/>.</exception>
    /// <exception cref="ArgumentException">More days are missing than accepted, or none is known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The latitude is beyond those the coefficient is printed for, or the share is no share.</exception>
    public static ClimateSum<ThermalTime> Huglin(
        DailyTemperatures days,
        DateSpan span,
        Angle latitude,
        HuglinMethod method,
        MissingDays missingDays = MissingDays.LeftOut,
        Ratio? maximumMissing = null)
    {
        Guard.NotNull(method);
        Estimate<double> coefficient = HuglinCoefficient(latitude);
        CountedDays counted = CountedDays.Of(days, span, missingDays, maximumMissing);
        double celsiusDays = coefficient.Value * counted.Sum((minimum, maximum, _) => method.CelsiusDays(minimum, maximum));
        return counted.Result(ThermalTime.FromCelsiusDays(celsiusDays), "", method.Evidence, coefficient.Cautions);
    }

    /// <summary>The day-length coefficient of Huglin's index.</summary>
    /// <param name="latitude">The latitude of the place, south negative, from -50 to 50°.</param>
    /// <returns>
    /// 1 up to 40° from the equator, 1.02 up to 42°, then 0.01 more every 2° to 1.06 up to 50°. A latitude at a limit takes the lower value.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">The latitude is beyond those the coefficient is printed for.</exception>
    public static Estimate<double> HuglinCoefficient(Angle latitude)
    {
        double latitudeDegrees = DayLengthCoefficient.Require(Boundary.Degrees(latitude), "°", nameof(latitude));
        double fromEquator = Math.Abs(latitudeDegrees);
        int step = (int)Math.Ceiling((fromEquator - 40) / 2);
        return new Estimate<double>(
            step <= 0 ? 1 : (101 + step) / 100.0,
            DayLengthCoefficient,
            cautions: latitudeDegrees < 0 ? [CoefficientUnclear, SouthByDistance] : [CoefficientUnclear]);
    }

    /// <summary>The class of a Huglin index.</summary>
    /// <param name="index">The index over the season.</param>
    /// <returns>The class; an index at a limit belongs to the cooler one.</returns>
    public static Estimate<HuglinClass> ClassOf(ThermalTime index)
    {
        int warmer = ClassLimitsCelsiusDays.Count(limit => index.CelsiusDays > limit);
        return new Estimate<HuglinClass>((HuglinClass)warmer, HuglinIndexClasses);
    }

    private static WinklerRegion RegionWithin(double sum, double[] limits) =>
        sum < limits[0] ? WinklerRegion.TooCool : (WinklerRegion)Math.Max(1, limits.Count(limit => sum > limit));

    private static bool IsOuter(WinklerRegion region) => region is WinklerRegion.TooCool or WinklerRegion.TooHot;
}
