using System.Globalization;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Tests.Units;

public class BoundaryTests
{
    // Where UnitsNet 5.75.1 itself is off its unit's definition by more than 1e-12, and by how much at most. Ours is exact there
    // (ExactFactors below); units that a grower does not meet are left to UnitsNet.
    private static readonly Dictionary<Enum, double> RoundedInUnitsNet = new()
    {
        [VolumeUnit.AcreFoot] = 2e-6,
        [VolumeUnit.CubicYard] = 3e-11,
        [VolumeUnit.UsOunce] = 2e-12,
        [VolumeUnit.ImperialOunce] = 2e-12,
        [MassUnit.Stone] = 1e-6,
        [DensityUnit.PoundPerCubicFoot] = 1e-8,
        [MassConcentrationUnit.PoundPerCubicFoot] = 1e-8,
        [DensityUnit.PoundPerUSGallon] = 3e-9,
        [DensityUnit.PoundPerImperialGallon] = 3e-7,
        [MassConcentrationUnit.OuncePerUSGallon] = 4e-10,
        [MassConcentrationUnit.PoundPerUSGallon] = 3e-9,
        [MassConcentrationUnit.OuncePerImperialGallon] = 5e-7,
        [MassConcentrationUnit.PoundPerImperialGallon] = 3e-7,
        [PressureUnit.MillimeterOfMercury] = 3e-8,
        [PressureUnit.InchOfMercury] = 1e-8,
        [ReciprocalAreaUnit.InverseSquareFoot] = 5e-7,
        [ReciprocalAreaUnit.InverseSquareYard] = 5e-7,
    };

    public static TheoryData<Enum> Rounded() => [.. RoundedInUnitsNet.Keys];

    public static TheoryData<string> Quantities() => [.. BoundaryQuantity.All.Select(quantity => quantity.Name)];

    /// <summary>The size of a unit in the unit of the kernels, by definition, as an exact decimal number or quotient of two.</summary>
    public static TheoryData<Enum, string, string> ExactFactors() => new()
    {
        { LengthUnit.Inch, "0.0254", "1" },
        { LengthUnit.Foot, "0.3048", "1" },
        { LengthUnit.Yard, "0.9144", "1" },
        { LengthUnit.Mile, "1609.344", "1" },
        { LengthUnit.Kilometer, "1000", "1" },
        { AreaUnit.SquareFoot, "0.09290304", "1" },
        { AreaUnit.SquareYard, "0.83612736", "1" },
        { AreaUnit.Acre, "4046.8564224", "1" },
        { AreaUnit.Hectare, "10000", "1" },
        { AreaUnit.SquareCentimeter, "0.0001", "1" },
        { VolumeUnit.CubicMeter, "1000", "1" },
        { VolumeUnit.CubicCentimeter, "0.001", "1" },
        { VolumeUnit.CubicInch, "0.016387064", "1" },
        { VolumeUnit.CubicFoot, "28.316846592", "1" },
        { VolumeUnit.CubicYard, "764.554857984", "1" },
        { VolumeUnit.AcreFoot, "1233481.83754752", "1" },
        { VolumeUnit.UsGallon, "3.785411784", "1" },
        { VolumeUnit.UsQuart, "0.946352946", "1" },
        { VolumeUnit.UsPint, "0.473176473", "1" },
        { VolumeUnit.UsCustomaryCup, "0.2365882365", "1" },
        { VolumeUnit.UsOunce, "0.0295735295625", "1" },
        { VolumeUnit.UsTablespoon, "0.01478676478125", "1" },
        { VolumeUnit.UsTeaspoon, "0.00492892159375", "1" },
        { VolumeUnit.MetricCup, "0.25", "1" },
        { VolumeUnit.MetricTeaspoon, "0.005", "1" },
        { VolumeUnit.ImperialGallon, "4.54609", "1" },
        { VolumeUnit.ImperialQuart, "1.1365225", "1" },
        { VolumeUnit.ImperialPint, "0.56826125", "1" },
        { VolumeUnit.ImperialOunce, "0.0284130625", "1" },
        { MassUnit.Pound, "0.45359237", "1" },
        { MassUnit.Ounce, "0.028349523125", "1" },
        { MassUnit.Stone, "6.35029318", "1" },
        { MassUnit.ShortTon, "907.18474", "1" },
        { MassUnit.LongTon, "1016.0469088", "1" },
        { MassUnit.Tonne, "1000", "1" },
        { DensityUnit.PoundPerCubicFoot, "453.59237", "28.316846592" },
        { DensityUnit.PoundPerCubicYard, "453.59237", "764.554857984" },
        { DensityUnit.PoundPerUSGallon, "453.59237", "3.785411784" },
        { DensityUnit.PoundPerImperialGallon, "453.59237", "4.54609" },
        { DensityUnit.GramPerCubicCentimeter, "1000", "1" },
        { MassConcentrationUnit.PoundPerCubicFoot, "453592.37", "28.316846592" },
        { MassConcentrationUnit.OuncePerUSGallon, "28349.523125", "3.785411784" },
        { MassConcentrationUnit.PoundPerUSGallon, "453592.37", "3.785411784" },
        { MassConcentrationUnit.OuncePerImperialGallon, "28349.523125", "4.54609" },
        { MassConcentrationUnit.PoundPerImperialGallon, "453592.37", "4.54609" },
        { ReciprocalAreaUnit.InverseSquareFoot, "1", "0.09290304" },
        { ReciprocalAreaUnit.InverseSquareYard, "1", "0.83612736" },
        { ReciprocalAreaUnit.InverseSquareInch, "1", "0.00064516" },
        { TemperatureDeltaUnit.DegreeFahrenheit, "1", "1.8" },
        { DurationUnit.Week, "7", "1" },
        { DurationUnit.Hour, "1", "24" },
        { DurationUnit.Minute, "1", "1440" },
        { DurationUnit.Second, "1", "86400" },
        { MassFractionUnit.MilligramPerKilogram, "0.000001", "1" },
        { VolumeConcentrationUnit.MillilitersPerLiter, "0.001", "1" },
        { RatioUnit.Percent, "0.01", "1" },
        { PressureUnit.Hectopascal, "0.1", "1" },
        { PressureUnit.Bar, "100", "1" },
        { PressureUnit.MillimeterOfMercury, "0.133322387415", "1" },
        { PressureUnit.InchOfMercury, "3.386388640341", "1" },
        { PressureUnit.PoundForcePerSquareInch, "0.0044482216152605", "0.00064516" },
    };

    [Theory]
    [MemberData(nameof(Quantities))]
    public void Boundary_EveryUnitOfAQuantity_AgreesWithUnitsNet(string name)
    {
        BoundaryQuantity quantity = BoundaryQuantity.All.Single(one => one.Name == name);
        List<string> surprises = [];
        int compared = 0;
        foreach (Enum unit in quantity.Units.Where(unit => !RoundedInUnitsNet.ContainsKey(unit)))
        {
            foreach (double value in (double[])[1, 7.3, 250, 0])
            {
                if (unit is AngleUnit.Tilt && value > 1)
                    continue; // A tilt is a sine.
                IQuantity made = Quantity.From(value, unit);
                double theirs = made.As(quantity.HouseUnit);
                double ours = quantity.Convert(made);
                double zero = quantity.Convert(Quantity.From(0, unit));
                compared++;
                if (Math.Abs(ours - theirs) > 1e-12 * Math.Max(Math.Abs(theirs), Math.Abs(zero) + 1e-300))
                    surprises.Add(FormattableString.Invariant($"{value} {unit}: ours {ours:R}, theirs {theirs:R}"));
            }
        }

        Assert.Empty(surprises);
        Assert.True(compared >= 12);
    }

    [Theory]
    [MemberData(nameof(ExactFactors))]
    public void Boundary_UnitInCommonUse_IsExactByDefinition(Enum unit, string numerator, string denominator)
    {
        BoundaryQuantity quantity = BoundaryQuantity.All.Single(one => one.Units.Contains(unit));
        decimal exact = decimal.Parse(numerator, CultureInfo.InvariantCulture) / decimal.Parse(denominator, CultureInfo.InvariantCulture);
        Close.Assert((double)exact, quantity.Convert(Quantity.From(1, unit)), 4e-16);
        Close.Assert((double)(exact * 12.5m), quantity.Convert(Quantity.From(12.5, unit)), 4e-16);
    }

    [Theory]
    [MemberData(nameof(Rounded))]
    public void UnitsNet_RoundedFactor_IsOffAsRecordedAndOursIsExact(Enum unit)
    {
        (string numerator, string denominator) = ExactFactors()
            .Where(row => row.Data.Item1.Equals(unit)).Select(row => (row.Data.Item2, row.Data.Item3)).Single();
        double exact = (double)(decimal.Parse(numerator, CultureInfo.InvariantCulture) / decimal.Parse(denominator, CultureInfo.InvariantCulture));
        BoundaryQuantity quantity = BoundaryQuantity.All.Single(one => one.Units.Contains(unit));
        double theirs = Quantity.From(1, unit).As(quantity.HouseUnit);
        double gap = Math.Abs(theirs / exact - 1);
        Assert.InRange(gap, 1e-12, RoundedInUnitsNet[unit]);
    }

    [Fact]
    public void UnitsNet_SpoonsCupsAndFluidOunces_AreTheDefinedOnes()
    {
        Close.Assert(231 * 2.54 * 2.54 * 2.54 / 768, Volume.FromUsTeaspoons(1).Milliliters, 1e-12);
        Close.Assert(231 * 2.54 * 2.54 * 2.54 / 256, Volume.FromUsTablespoons(1).Milliliters, 1e-12);
        Close.Assert(231 * 2.54 * 2.54 * 2.54 / 16, Volume.FromUsCustomaryCups(1).Milliliters, 1e-12);
        Close.Assert(5, Volume.FromMetricTeaspoons(1).Milliliters, 1e-12);
        Close.Assert(250, Volume.FromMetricCups(1).Milliliters, 1e-12);
        Close.Assert(240, Volume.FromUsLegalCups(1).Milliliters, 1e-12);
        Close.Assert(15, Volume.FromUkTablespoons(1).Milliliters, 1e-12);
        Close.Assert(20, Volume.FromAuTablespoons(1).Milliliters, 1e-12);
        Close.Assert(231 * 2.54 * 2.54 * 2.54 / 128, Volume.FromUsOunces(1).Milliliters, 2e-12);
        Close.Assert(4546.09 / 160, Volume.FromImperialOunces(1).Milliliters, 2e-12);
    }

    [Fact]
    public void Fahrenheit_ThereAndBack_IsExactAtTheUsualThresholds()
    {
        for (int celsius = -40; celsius <= 60; celsius += 5)
        {
            int fahrenheit = celsius / 5 * 9 + 32;
            Assert.Equal(fahrenheit, Boundary.FahrenheitFromCelsius(celsius));
            Assert.Equal(celsius, Boundary.CelsiusFromFahrenheit(fahrenheit));
            Assert.Equal(celsius, Boundary.Celsius(Temperature.FromDegreesFahrenheit(fahrenheit)));
        }
    }
}
