using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>A published way to count corn heat units.</summary>
/// <remarks>
/// Both ways take the mean of a night part, 1.8 (minimum − 4.4 °C), and of a day part, 3.33 (maximum − 10 °C) − 0.084 (maximum − 10 °C)². They
/// differ on cool days: Ontario takes a part below zero for zero, the federal data set prints no such rule. A rating of a hybrid belongs to the
/// way it was made with: in Canada that is Ontario's in Ontario.
/// </remarks>
public sealed record CornHeatUnitMethod
{
    private static readonly Source OpenCanada = new(
        "canada-corn-heat-units",
        "Crop (corn) heat units",
        "Agriculture and Agri-Food Canada",
        2017,
        "https://open.canada.ca/data/en/dataset/07875f11-c342-4450-bdaa-0cdeaf43c0c9");

    private static readonly Source FieldCropNews = new(
        "ontario-crop-heat-units",
        "Using crop heat units",
        "Ontario Ministry of Agriculture, Food and Agribusiness, Field Crop News",
        2025,
        "https://fieldcropnews.com/2025/02/using-crop-heat-units");

    private CornHeatUnitMethod(string key, string name, Source source, bool isFloored, CountingSeason season)
    {
        Evidence = new Method(key, name, source, new Domain("maize and other crops of warm seasons, Canada"));
        IsFloored = isFloored;
        Season = season;
    }

    /// <summary>
    /// As the federal data set prints it: neither part is kept from going below zero, so that a cold day takes from the sum. Counted from
    /// 1 April to 31 October.
    /// </summary>
    public static CornHeatUnitMethod Canada { get; } = new(
        "corn-heat-units.canada",
        "corn heat units, parts below zero counted",
        OpenCanada,
        isFloored: false,
        new CountingSeason(new MonthDay(4, 1), new MonthDay(10, 31)));

    /// <summary>
    /// As in Ontario: maize does not develop on a day at or below 10 °C or in a night at or below 4.4 °C, so a part below zero counts as zero.
    /// Counted from 1 May to the first −2 °C of autumn (<see cref="CornHeatUnits.OntarioSeason"/>), at the latest to the end of the year.
    /// </summary>
    public static CornHeatUnitMethod Ontario { get; } = new(
        "corn-heat-units.ontario",
        "corn heat units, parts below zero taken for zero",
        FieldCropNews,
        isFloored: true,
        new CountingSeason(new MonthDay(5, 1), new MonthDay(12, 31)));

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<CornHeatUnitMethod> All { get; } = ValueList<CornHeatUnitMethod>.Of([Canada, Ontario]);

    /// <summary>The method's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>Whether a part of the day below zero is taken for zero.</summary>
    public bool IsFloored { get; }

    /// <summary>The season its source counts, an input where another is wanted: Ontario's last day is only the latest possible one.</summary>
    public CountingSeason Season { get; }

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static CornHeatUnitMethod FromKey(string key) => Keyed.Find(All, method => method.Evidence.Key, key);

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>corn heat units, parts below zero taken for zero</c>.</returns>
    public override string ToString() => Evidence.Name;

    internal double Units(double minimumCelsius, double maximumCelsius)
    {
        double aboveTen = maximumCelsius - 10;
        double night = 1.8 * (minimumCelsius - 4.4);
        double day = 3.33 * aboveTen - 0.084 * aboveTen * aboveTen;
        return IsFloored ? (Math.Max(0, night) + Math.Max(0, day)) / 2 : (night + day) / 2;
    }
}
