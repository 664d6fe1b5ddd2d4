using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Mixes;

/// <summary>The spoons and cups of UnitsNet against their definitions. A US gallon is 231 cubic inches, an imperial one 4.54609 L.</summary>
public class HouseholdMeasureTests
{
    private const double UsGallonMillilitres = 231 * 2.54 * 2.54 * 2.54;
    private const double ImperialGallonMillilitres = 4546.09;

    public static TheoryData<VolumeUnit, double> Definitions() => new()
    {
        { VolumeUnit.UsTeaspoon, UsGallonMillilitres / 768 },
        { VolumeUnit.UsTablespoon, UsGallonMillilitres / 256 },
        { VolumeUnit.UsOunce, UsGallonMillilitres / 128 },
        { VolumeUnit.UsCustomaryCup, UsGallonMillilitres / 16 },
        { VolumeUnit.UsPint, UsGallonMillilitres / 8 },
        { VolumeUnit.UsQuart, UsGallonMillilitres / 4 },
        { VolumeUnit.UsGallon, UsGallonMillilitres },
        { VolumeUnit.UsLegalCup, 240 },
        { VolumeUnit.MetricTeaspoon, 5 },
        { VolumeUnit.MetricCup, 250 },
        { VolumeUnit.AuTablespoon, 20 },
        { VolumeUnit.ImperialOunce, ImperialGallonMillilitres / 160 },
        { VolumeUnit.ImperialPint, ImperialGallonMillilitres / 8 },
        { VolumeUnit.ImperialGallon, ImperialGallonMillilitres },
    };

    [Theory]
    [MemberData(nameof(Definitions))]
    public void Measure_OfTheKitchen_IsAsDefined(VolumeUnit unit, double millilitres) =>
        Assert.Equal(1, new Volume(1, unit).Milliliters / millilitres, 9);
}
