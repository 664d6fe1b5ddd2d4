using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>Published thermal times of germination and emergence, of crops and of weeds.</summary>
public static class GerminationNeeds
{
    private static readonly Ratio Half = Ratio.FromPercent(50);

    /// <summary>Onion on moist paper: 80 °C·d above 2.5 °C to half of the seed, fitted from 5 to 25 °C.</summary>
    public static GerminationNeed Onion { get; } = new(
        "onion",
        "moist paper, 5 to 25 °C",
        GerminationStage.Germination,
        Half,
        GerminationResponse.Linear,
        new CardinalTemperatures(Celsius(2.5)),
        ThermalTime.FromCelsiusDays(80),
        ThermalTime.FromCelsiusDays(80),
        GerminationSources.Onion,
        Celsius(25));

    /// <summary>Fennel of Hamedan in dishes: 165.5 hours at 12.53 to 25 °C to half of the seed.</summary>
    public static GerminationNeed FennelHamedan { get; } = Fennel("Hamedan", 12.53, 25.00, 40.12, 165.5);

    /// <summary>Fennel of Malayer in dishes: 168.4 hours at 12.75 to 32.81 °C to half of the seed.</summary>
    public static GerminationNeed FennelMalayer { get; } = Fennel("Malayer", 12.75, 32.81, 42.00, 168.4);

    /// <summary>Fennel of Isfahan in dishes: 158.3 hours at 13.45 to 33.56 °C to half of the seed.</summary>
    public static GerminationNeed FennelIsfahan { get; } = Fennel("Isfahan", 13.45, 33.56, 35.57, 158.3);

    /// <summary>
    /// Lentil in the field: six days at 22.9 °C to emergence by the beta curve. The source calls that 94 °C·d, but six days of 18.4 degrees are
    /// 110.4; the days and the temperatures are kept.
    /// </summary>
    public static GerminationNeed Lentil { get; } = AtOptimum(
        "lentil",
        "field, six cultivars sown on many dates, Iran",
        GerminationStage.Emergence,
        null,
        GerminationResponse.Beta,
        new CardinalTemperatures(Celsius(4.5), Celsius(22.9), null, Celsius(40)),
        Duration.FromDays(6),
        GerminationSources.Lentil);

    /// <summary>Maize in the field, by air temperature held between 50 and 86 °F: 125 °F·d from planting to emergence.</summary>
    public static GerminationNeed Maize { get; } = new(
        "maize",
        "field, air temperature between 50 and 86 °F, from planting",
        GerminationStage.Emergence,
        null,
        GerminationResponse.Linear,
        new CardinalTemperatures(Temperature.FromDegreesFahrenheit(50)),
        ThermalTime.FromFahrenheitDays(125),
        ThermalTime.FromFahrenheitDays(125),
        GerminationSources.WisconsinMaize,
        Temperature.FromDegreesFahrenheit(86),
        countsAir: true);

    /// <summary>Cotton in the field: 50 to 60 °F·d above 60 °F from planting to emergence.</summary>
    public static GerminationNeed Cotton { get; } = new(
        "cotton",
        "field, air temperature, from planting",
        GerminationStage.Emergence,
        null,
        GerminationResponse.Linear,
        new CardinalTemperatures(Temperature.FromDegreesFahrenheit(60)),
        ThermalTime.FromFahrenheitDays(50),
        ThermalTime.FromFahrenheitDays(60),
        GerminationSources.Cotton,
        countsAir: true);

    /// <summary>Waterhemp, the first seedlings: 350 °F·d above 48 °F.</summary>
    public static GerminationNeed Waterhemp { get; } = new(
        "waterhemp",
        "field, first seedlings, North Dakota",
        GerminationStage.Emergence,
        null,
        GerminationResponse.Linear,
        new CardinalTemperatures(Temperature.FromDegreesFahrenheit(48)),
        ThermalTime.FromFahrenheitDays(350),
        ThermalTime.FromFahrenheitDays(350),
        GerminationSources.Waterhemp,
        countsAir: true);

    /// <summary>Every need there is; the weeds of the north central United States by their botanical names.</summary>
    public static IReadOnlyList<GerminationNeed> All { get; } = ValueList<GerminationNeed>.Of(
    [
        Onion, FennelHamedan, FennelMalayer, FennelIsfahan, Lentil, Maize, Cotton, Waterhemp,
        Weed("Polygonum pensylvanicum", 80),
        Weed("Kochia scoparia", 155),
        Weed("Polygonum convolvulus", 172),
        Weed("Salsola kali", 195),
        Weed("Chenopodium album", 200),
        Weed("Abutilon theophrasti", 250),
        Weed("Setaria faberi", 265),
        Weed("Descurainia pinnata", 270),
        Weed("Setaria viridis", 340),
        Weed("Sida spinosa", 510),
        Weed("Panicum miliaceum (wild)", 535),
        Weed("Amaranthus spp.", 639),
        Weed("Ipomoea purpurea", 725),
    ]);

    /// <summary>All needs of a plant.</summary>
    /// <param name="crop">The plant in English, or the botanical name of a weed, capitals or not.</param>
    /// <returns>The needs; none where no source has the plant.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static IReadOnlyList<GerminationNeed> Of(string crop)
    {
        Guard.NotBlank(crop);
        return ValueList<GerminationNeed>.Of(All.Where(need => need.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase)));
    }

    private static GerminationNeed Fennel(string variety, double lowerOptimum, double upperOptimum, double ceiling, double hours) => AtOptimum(
        "fennel",
        $"variety {variety}, dishes at 10 to 35 °C",
        GerminationStage.Germination,
        Half,
        GerminationResponse.Segmented,
        new CardinalTemperatures(Celsius(5), Celsius(lowerOptimum), Celsius(upperOptimum), Celsius(ceiling)),
        Duration.FromHours(hours),
        GerminationSources.Fennel);

    private static GerminationNeed AtOptimum(
        string crop,
        string condition,
        GerminationStage stage,
        Ratio? share,
        GerminationResponse response,
        CardinalTemperatures temperatures,
        Duration timeAtOptimum,
        Source source)
    {
        ThermalTime needed = ThermalTime.From(
            TemperatureDelta.FromDegreesCelsius(temperatures.LowerOptimumCelsius!.Value - temperatures.BaseCelsius), timeAtOptimum);
        return new GerminationNeed(crop, condition, stage, share, response, temperatures, needed, needed, source);
    }

    private static GerminationNeed Weed(string species, double celsiusDays) => new(
        species,
        "field, soil temperature, two or more site-years; the source's abstract does not say from which day",
        GerminationStage.Emergence,
        Half,
        GerminationResponse.Linear,
        new CardinalTemperatures(Celsius(4.4)),
        ThermalTime.FromCelsiusDays(celsiusDays),
        ThermalTime.FromCelsiusDays(celsiusDays),
        GerminationSources.WeedEmergence);

    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);
}
