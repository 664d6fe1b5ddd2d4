using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>Published cardinal temperatures of germination; with or without a thermal time to go with them.</summary>
/// <remarks>
/// Three sources give fennel bases of 3.3, 3.9 and 5 °C and optima from 12.5 to 33.6 °C: what a fit gives depends on the seed and on the shape
/// fitted.
/// </remarks>
public static class CardinalTemperatureRecords
{
    /// <summary>Every record there is: those of <see cref="GerminationNeeds"/> first, then those printed without a thermal time.</summary>
    public static IReadOnlyList<CardinalTemperatureRecord> All { get; } = ValueList<CardinalTemperatureRecord>.Of(
    [
        .. GerminationNeeds.All.Select(need => new CardinalTemperatureRecord(need.Crop, need.Condition, need.Temperatures, need.Source)),
        Of("onion", "White Lisbon", 3.5, null, null, GerminationSources.OnionWhiteLisbon),
        Of("cumin", "ecotype Khorasani", 0, 11.4, 25, GerminationSources.Cumin),
        Of("cumin", "ecotype Kermani", 0, 11.5, 28.9, GerminationSources.Cumin),
        Of("cumin", "ecotype Jandaghi", 3.1, 9.6, 27.1, GerminationSources.Cumin),
        Of("cumin", "ecotype Esfahan", 0, 10.1, 35.5, GerminationSources.Cumin),
        Of("ajowan", "dishes at 5 to 35 °C", 2.88, 20, 38.35, GerminationSources.MedicinalPlants),
        Of("fennel", "dishes at 5 to 35 °C", 3.86, 20, 34.98, GerminationSources.MedicinalPlants),
        Of("dill", "dishes at 5 to 35 °C", 5, 13, 33.7, GerminationSources.MedicinalPlants),
        Of("Thymus transcaspicus", "growth chamber at 5 to 45 °C", 1.4, 29.93, 44.66, GerminationSources.ThymeFennelCalligonum),
        Of("fennel", "growth chamber at 5 to 45 °C", 3.33, 21.35, 42.54, GerminationSources.ThymeFennelCalligonum),
        Of("Calligonum junceum", "growth chamber at 5 to 45 °C", 5.23, 33.60, 45, GerminationSources.ThymeFennelCalligonum),
        Of("non-heading Chinese cabbage", "as leafy vegetable", 8, 29, null, GerminationSources.LeafyVegetables),
        Of("watermelon", "as leafy vegetable", 8, 30, null, GerminationSources.LeafyVegetables),
        Of("spider flower", "as leafy vegetable", 15, 31, null, GerminationSources.LeafyVegetables),
        Of("wild proso millet", "lower threshold of development", 6.9, null, null, GerminationSources.WeedThresholds),
        Of("barnyardgrass", "lower threshold of development", 9.7, null, null, GerminationSources.WeedThresholds),
        Of("common lambsquarters", "lower threshold of development", 6.0, null, null, GerminationSources.WeedThresholds),
        Of("redroot pigweed", "lower threshold of development", 10.0, null, null, GerminationSources.WeedThresholds),
    ]);

    /// <summary>The records of a plant, of every source.</summary>
    /// <param name="crop">The plant, capitals or not.</param>
    /// <returns>The records; none where no source has the plant.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public static IReadOnlyList<CardinalTemperatureRecord> Of(string crop)
    {
        Guard.NotBlank(crop);
        return ValueList<CardinalTemperatureRecord>.Of(All.Where(record => record.Crop.Equals(crop, StringComparison.OrdinalIgnoreCase)));
    }

    private static CardinalTemperatureRecord Of(string crop, string condition, double @base, double? optimum, double? ceiling, Source source) =>
        new(crop, condition, new CardinalTemperatures(Temperature.FromDegreesCelsius(@base), Celsius(optimum), null, Celsius(ceiling)), source);

    private static Temperature? Celsius(double? value) => value is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;
}
