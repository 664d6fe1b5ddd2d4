using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Climate;

/// <summary>The Canadian hardiness index: seven figures of a climate that together tell whether woody plants survive.</summary>
/// <remarks>
/// It cannot be turned into the zones of the US Department of Agriculture: one Canadian zone spans five to nine of their half zones.
/// </remarks>
public static class CanadianHardiness
{
    private static readonly Source Formula = new(
        "canadian-hardiness-index",
        "Plant hardiness in Canada: the suitability index of Ouellet and Sherk, quoted",
        "Natural Resources Canada, quoted by a garden page",
        2011,
        "https://canadiandoomer.ca/2011/04/plant-hardiness-and-usda-zones.html");

    private static readonly Source Bounds = new(
        "canadian-hardiness-zones",
        "Canada's plant hardiness site: zones of the index",
        "Natural Resources Canada",
        2006,
        "http://planthardiness.gc.ca/?m=17&lang=en");

    private static readonly Method IndexMethod = new(
        "hardiness.canadian-index", "Canadian hardiness index", Formula, new Domain("the climates of Canada; normals of a station"));

    private static readonly Method ZoneMethod = new(
        "hardiness.canadian-zone", "Canadian hardiness zone", Bounds, new Domain("zones 0a to 9a", new DomainLimit("index", 0, 94, "")));

    /// <summary>The index of a climate.</summary>
    /// <param name="meanMinimumOfColdestMonth">The mean daily minimum of the coldest month.</param>
    /// <param name="frostFreePeriod">How long the mean frost-free period is, from 0 to 366 days.</param>
    /// <param name="rainJuneToNovember">The rain from June to November, 0 or more.</param>
    /// <param name="meanMaximumOfWarmestMonth">The mean daily maximum of the warmest month.</param>
    /// <param name="rainInJanuary">The rain of January, 0 or more; snow does not count.</param>
    /// <param name="meanMaximumSnowDepth">The mean of each year's greatest snow depth, 0 or more.</param>
    /// <param name="strongestGust">The strongest gust in 30 years, 0 or more.</param>
    /// <returns>The index, about 0 in the coldest and 92 in the mildest places of Canada.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure is impossible.</exception>
    public static Estimate<double> Index(
        Temperature meanMinimumOfColdestMonth,
        Duration frostFreePeriod,
        Length rainJuneToNovember,
        Temperature meanMaximumOfWarmestMonth,
        Length rainInJanuary,
        Length meanMaximumSnowDepth,
        Speed strongestGust)
    {
        double coldCelsius = Celsius(meanMinimumOfColdestMonth, nameof(meanMinimumOfColdestMonth));
        double frostFreeDays = Guard.Within(Boundary.Days(frostFreePeriod), 0, 366, "days", nameof(frostFreePeriod));
        double rainMillimetres = Millimetres(rainJuneToNovember, nameof(rainJuneToNovember));
        double warmCelsius = Celsius(meanMaximumOfWarmestMonth, nameof(meanMaximumOfWarmestMonth));
        double januaryMillimetres = Millimetres(rainInJanuary, nameof(rainInJanuary));
        double snowMillimetres = Millimetres(meanMaximumSnowDepth, nameof(meanMaximumSnowDepth));
        double gustKilometresPerHour = Guard.NotNegative(strongestGust.As(SpeedUnit.KilometerPerHour), "km/h", nameof(strongestGust));
        double index = -67.62
            + 1.734 * coldCelsius
            + 0.1868 * frostFreeDays
            + 69.77 * rainMillimetres / (rainMillimetres + 25.4)
            + 1.256 * warmCelsius
            + 0.006119 * (0 - coldCelsius) * januaryMillimetres
            + 22.37 * snowMillimetres / (snowMillimetres + 25.4)
            - 0.01832 * gustKilometresPerHour;
        return new Estimate<double>(index, IndexMethod);
    }

    /// <summary>The zone of an index.</summary>
    /// <param name="index">The index, from 0 to 94, as far as zones are printed.</param>
    /// <returns>The zone, <c>0a</c> to <c>9a</c>: the tens are the zone, the upper five of each ten its warmer half.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The index is outside the zones.</exception>
    /// <example><code>
    /// Estimate&lt;string&gt; zone = CanadianHardiness.ZoneOf(42); // 4a
    /// </code></example>
    public static Estimate<string> ZoneOf(double index)
    {
        ZoneMethod.Require(index, "", nameof(index));
        int half = (int)(index / 5);
        return new Estimate<string>($"{half / 2}{(half % 2 == 0 ? 'a' : 'b')}", ZoneMethod);
    }

    private static double Celsius(Temperature temperature, string parameter) =>
        Guard.Within(Boundary.Celsius(temperature), AirTemperature.LowestCelsius, AirTemperature.HighestCelsius, "°C", parameter);

    private static double Millimetres(Length length, string parameter) => Guard.NotNegative(Boundary.Metres(length) * 1000, "mm", parameter);
}
