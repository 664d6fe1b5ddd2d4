using System.Globalization;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Units;

/// <summary>The examples in the documentation of the units, with what their comments promise.</summary>
public class ExampleTests
{
    [Fact]
    public void Ph_Example_Holds()
    {
        Ph wanted = new(6.5);
        Ph measured = Ph.Parse("pH 5.8", CultureInfo.InvariantCulture);
        Assert.Equal(0.7, wanted - measured, 1e-12);
        Assert.Equal("pH 5.41", Ph.MeanOfSolutions(new Ph(5.2), new Ph(5.4), new Ph(5.9)).ToString());
        Assert.Equal("pH 5.5", Ph.MeanOfSoilSamples(new Ph(5.2), new Ph(5.4), new Ph(5.9)).ToString());
    }

    [Fact]
    public void ThermalTime_Example_Holds()
    {
        ThermalTime needed = ThermalTime.FromFahrenheitDays(2700);
        Duration time = needed / TemperatureDelta.FromDegreesCelsius(12);
        Assert.Equal("1500 °C·d", needed.ToString());
        Assert.Equal(125, time.Days);
    }

    [Fact]
    public void Charges_Examples_Hold()
    {
        ExchangeableCharge capacity = ExchangeableCharge.FromCentimolesPerKilogram(12);
        ExchangeableCharge exchangeable = ExchangeableCharge.Parse("3 meq/100 g", CultureInfo.InvariantCulture);
        Assert.Equal(0.75, (capacity - exchangeable) / capacity);

        VolumetricCharge acidity = VolumetricCharge.FromMilliequivalentsPer100CubicCentimetres(1.2);
        Assert.Equal("1 cmol(c)/kg", (acidity / Density.FromGramsPerCubicCentimeter(1.2)).ToString());
    }

    [Fact]
    public void TradeUnits_Examples_Hold()
    {
        Assert.Equal(2441, AreaDensity.FromPoundsPerHundredSquareFeet(5).KilogramsPerHectare, 0.5);
        Assert.Equal(20.4, Length.FromUsGallonsPerSquareFoot(0.5).Millimeters, 0.05);
        Assert.Equal(6.17, Length.FromInches(2).CubicYardsPerThousandSquareFeet, 0.005);
        Volume bag = Volume.FromUsDryQuarts(25);
        Assert.Equal(27.5, bag.Liters, 0.05);
        Assert.Equal(29.1, bag / Volume.FromUsQuarts(1), 0.05);
    }

    [Fact]
    public void EstimateAndText_Examples_Hold()
    {
        Source source = Source.CommonPractice("layer", "a 4-inch layer of organic matter");
        Method method = new("layer", "customary layer", source, new Domain("garden beds"));
        Estimate<Length> depth = new(Length.FromInches(4), method);
        Estimate<Volume> compost = depth.Select(layer => layer * Area.FromSquareMeters(4.8));
        Assert.Equal("488 L; customary layer [common practice: a 4-inch layer of organic matter]", compost.ToString());
        Assert.Equal("1.23 kg", QuantityText.Format(Mass.FromGrams(1234.6), MeasurementSystem.Metric, null));
        Assert.Equal("2.72 lb", QuantityText.Format(Mass.FromGrams(1234.6), MeasurementSystem.UsCustomary, null));
    }
}
