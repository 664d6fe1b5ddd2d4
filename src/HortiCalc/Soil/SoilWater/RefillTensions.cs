using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>The tensions at which crops want water again, Taylor and Ashcroft 1972, whole table.</summary>
public static class RefillTensions
{
    // A kilopascal is the pressure of 10.2 cm of water (101.97 mm, by 9.80665 m/s²).
    private const double CentimetresPerKilopascal = 10.1971621297793;

    /// <summary>Every crop.</summary>
    public static IReadOnlyList<RefillTension> All { get; } = ValueList<RefillTension>.Of(
    [
        Row("Alfalfa", "vegetative", 1500, 1500),
        Row("Beans (snap and lima)", "vegetative", 750, 2000),
        Row("Cabbage", "vegetative", 600, 700),
        Row("Canning peas", "vegetative", 300, 500),
        Row("Celery", "vegetative", 200, 300),
        Row("Grass", "vegetative", 300, 1000),
        Row("Lettuce", "vegetative", 400, 600),
        Row("Tobacco", "vegetative", 300, 800),
        Row("Sugar cane, tensiometer", "vegetative", 150, 500),
        Row("Sugar cane, blocks", "vegetative", 1000, 2000),
        Row("Sweet corn", "vegetative", 500, 1000),
        Row("Turfgrass", "vegetative", 240, 360),
        Row("Onions, early growth", "root", 450, 550),
        Row("Onions, bulbing", "root", 550, 650),
        Row("Sugar beets", "root", 400, 600),
        Row("Potatoes", "root", 300, 500),
        Row("Carrots", "root", 550, 650),
        Row("Broccoli, early", "root", 450, 550),
        Row("Broccoli, after budding", "root", 600, 700),
        Row("Cauliflower", "root", 600, 700),
        Row("Lemons", "fruit", 400, 400),
        Row("Oranges", "fruit", 200, 1000),
        Row("Deciduous fruit", "fruit", 500, 800),
        Row("Avocadoes", "fruit", 500, 500),
        Row("Grapes, early season", "fruit", 400, 500),
        Row("Grapes, during maturity", "fruit", 1000, 1000),
        Row("Strawberries", "fruit", 200, 300),
        Row("Cantaloupe", "fruit", 350, 450),
        Row("Tomatoes", "fruit", 800, 1500),
        Row("Bananas", "fruit", 300, 1500),
        Row("Corn, vegetative", "grain", 500, 500),
        Row("Corn, ripening", "grain", 8000, 12000),
        Row("Small grains, vegetative", "grain", 400, 500),
        Row("Small grains, ripening", "grain", 8000, 12000),
        Row("Alfalfa, prior to bloom", "seed", 2000, 2000),
        Row("Alfalfa, during bloom", "seed", 4000, 8000),
        Row("Alfalfa, ripening", "seed", 8000, 15000),
        Row("Carrots, at 60 cm depth", "seed", 4000, 6000),
        Row("Onions, at 7 cm depth", "seed", 4000, 6000),
        Row("Onions, at 15 cm depth", "seed", 1500, 1500),
        Row("Lettuce, productive phase", "seed", 3000, 3000),
    ]);

    /// <summary>The rows of a crop.</summary>
    /// <param name="crop">One or more words that all stand in the name, capitals and plural or not.</param>
    /// <returns>The rows; none where the table does not have the crop.</returns>
    /// <exception cref="ArgumentException">The crop is empty.</exception>
    /// <example><code>
    /// RefillTension lettuce = RefillTensions.Of("lettuce")[0];
    /// Console.WriteLine(lettuce);   // Lettuce: 39.2 kPa to 58.8 kPa [...]
    /// </code></example>
    public static IReadOnlyList<RefillTension> Of(string crop)
    {
        Guard.NotBlank(crop);
        return ValueList<RefillTension>.Of(All.Where(row => CropNames.Matches(crop, row.Crop)));
    }

    private static RefillTension Row(string crop, string use, double hotCentimetres, double mildCentimetres) => new(
        crop,
        use,
        Pressure.FromKilopascals(hotCentimetres / CentimetresPerKilopascal),
        Pressure.FromKilopascals(mildCentimetres / CentimetresPerKilopascal),
        SoilWaterSources.TaylorAshcroft);
}
