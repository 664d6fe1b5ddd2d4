using FsCheck.Xunit;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Units;

public class TradeUnitProperties
{
    public static TheoryData<string> Names() => [.. TradeUnit.All.Select(unit => unit.Name)];

    [Property]
    public bool ReadOut_OfWhatWasMade_GivesTheValueBack(int a) =>
        TradeUnit.All.All(unit => Close.To(a / 8.0, unit.ThereAndBack(a / 8.0), 1e-15));

    [Property]
    public bool Factories_TwiceTheValue_IsTwiceTheQuantity(int a) =>
        TradeUnit.All.All(unit => Close.To(2 * unit.InHouseUnit(a / 8.0), unit.InHouseUnit(a / 4.0), 1e-15));

    [Property]
    public bool Rates_PerAThousandSquareFeet_AreTenTimesThoseOfPerAHundred(int a) => Close.To(
        AreaDensity.FromPoundsPerHundredSquareFeet(a).PoundsPerThousandSquareFeet, a * 10.0, 1e-15);

    [Property]
    public bool Rates_PerAcre_AreFortyThreeAndAHalfTimesThoseOfAThousandSquareFeet(int a) => Close.To(
        AreaDensity.FromPoundsPerThousandSquareFeet(a).PoundsPerAcre, a * 43.56, 1e-14);

    [Property]
    public bool Rate_OverItsArea_IsItsMass(ushort a) =>
        Close.To(a, (AreaDensity.FromPoundsPerHundredSquareFeet(a) * Area.FromSquareFeet(100)).Pounds)
        && Close.To(a, (AreaDensity.FromKilogramsPerHectare(a) * Area.FromHectares(1)).Kilograms)
        && Close.To(a, (AreaDensity.FromTonnesPerHectare(a) * Area.FromHectares(1)).Tonnes)
        && Close.To(a, (AreaDensity.FromPoundsPerAcre(a) * Area.FromAcres(1)).Pounds)
        && Close.To(a, (AreaDensity.FromShortTonsPerAcre(a) * Area.FromAcres(1)).ShortTons)
        && Close.To(a, (AreaDensity.FromOuncesPerSquareYard(a) * Area.FromSquareYards(1)).Ounces);

    [Property]
    public bool Depth_OverItsArea_IsItsVolume(ushort a) =>
        Close.To(a, (Length.FromLitersPerSquareMeter(a) * Area.FromSquareMeters(1)).Liters)
        && Close.To(a, (Length.FromUsGallonsPerSquareFoot(a) * Area.FromSquareFeet(1)).UsGallons)
        && Close.To(a, (Length.FromCubicMetersPerHectare(a) * Area.FromHectares(1)).CubicMeters)
        && Close.To(a, (Length.FromCubicYardsPerThousandSquareFeet(a) * Area.FromSquareFeet(1000)).CubicYards, 1e-10);

    [Property]
    public bool AcreInches_OverAnAcre_AreInches(ushort a) => Close.To(a, (Volume.FromAcreInches(a) / Area.FromAcres(1)).Inches);

    [Property]
    public bool DryMeasure_OfOneVolume_KeepsItsRatios(ushort a)
    {
        Volume volume = Volume.FromUsBushels(a);
        return Close.To(4.0 * a, volume.UsPecks, 1e-15) && Close.To(32.0 * a, volume.UsDryQuarts, 1e-15) && Close.To(64.0 * a, volume.UsDryPints, 1e-15);
    }

    [Property]
    public bool ReadOut_InAnotherUnitOfTheSameQuantity_IsTheSame(ushort a)
    {
        AreaDensity rate = AreaDensity.FromGramsPerSquareMeter(a);
        Volume volume = Volume.FromLiters(a);
        Length depth = Length.FromMillimeters(a);
        return Close.To(rate.PoundsPerAcre, AreaDensity.FromKilogramsPerSquareMeter(a / 1000.0).PoundsPerAcre, 1e-15)
            && Close.To(volume.UsBushels, Volume.FromCubicMeters(a / 1000.0).UsBushels, 1e-15)
            && Close.To(depth.LitersPerSquareMeter, Length.FromInches(a / 25.4).LitersPerSquareMeter, 1e-15);
    }

    [Fact]
    public void DryQuart_AgainstTheLiquidOne_HoldsASixthMore() =>
        Assert.Equal(1.16365, Volume.FromUsDryQuarts(1).Liters / Volume.FromUsQuarts(1).Liters, 5e-6);

    [Fact]
    public void ImperialBushel_AgainstTheUsOne_IsThreePercentLarger() =>
        Assert.Equal(1.032, Volume.FromImperialBushels(1).UsBushels, 5e-4);

    [Theory]
    [MemberData(nameof(Names))]
    public void Factories_NotFinite_AreRefusedWithTheUnit(string name)
    {
        TradeUnit unit = TradeUnit.All.Single(one => one.Name == name);
        foreach (double value in (double[])[double.NaN, double.PositiveInfinity, double.NegativeInfinity])
        {
            ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => unit.InHouseUnit(value));
            Assert.Equal("value", refused.ParamName);
            Assert.Contains(unit.Abbreviation + "; allowed: a finite number", refused.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Factories_Negative_AreTakenAsADifference(string name)
    {
        TradeUnit unit = TradeUnit.All.Single(one => one.Name == name);
        Assert.Equal(-unit.InHouseUnit(3), unit.InHouseUnit(-3));
    }

    private sealed record TradeUnit(string Name, string Abbreviation, Func<double, double> ThereAndBack, Func<double, double> InHouseUnit)
    {
        public static IReadOnlyList<TradeUnit> All { get; } =
        [
            Rate("KilogramsPerHectare", "kg/ha", AreaDensity.FromKilogramsPerHectare, rate => rate.KilogramsPerHectare),
            Rate("TonnesPerHectare", "t/ha", AreaDensity.FromTonnesPerHectare, rate => rate.TonnesPerHectare),
            Rate("PoundsPerHundredSquareFeet", "lb/100 sq ft", AreaDensity.FromPoundsPerHundredSquareFeet, rate => rate.PoundsPerHundredSquareFeet),
            Rate("PoundsPerThousandSquareFeet", "lb/1000 sq ft", AreaDensity.FromPoundsPerThousandSquareFeet, rate => rate.PoundsPerThousandSquareFeet),
            Rate("PoundsPerAcre", "lb/acre", AreaDensity.FromPoundsPerAcre, rate => rate.PoundsPerAcre),
            Rate("ShortTonsPerAcre", "US tons/acre", AreaDensity.FromShortTonsPerAcre, rate => rate.ShortTonsPerAcre),
            Rate("OuncesPerSquareYard", "oz/sq yd", AreaDensity.FromOuncesPerSquareYard, rate => rate.OuncesPerSquareYard),
            Depth("LitersPerSquareMeter", "L/m²", Length.FromLitersPerSquareMeter, depth => depth.LitersPerSquareMeter),
            Depth("UsGallonsPerSquareFoot", "gal/sq ft", Length.FromUsGallonsPerSquareFoot, depth => depth.UsGallonsPerSquareFoot),
            Depth("CubicYardsPerThousandSquareFeet", "cu yd/1000 sq ft", Length.FromCubicYardsPerThousandSquareFeet, depth => depth.CubicYardsPerThousandSquareFeet),
            Depth("CubicMetersPerHectare", "m³/ha", Length.FromCubicMetersPerHectare, depth => depth.CubicMetersPerHectare),
            Content("UsBushels", "bu (US)", Volume.FromUsBushels, volume => volume.UsBushels),
            Content("UsPecks", "pk (US)", Volume.FromUsPecks, volume => volume.UsPecks),
            Content("UsDryQuarts", "dry qt (US)", Volume.FromUsDryQuarts, volume => volume.UsDryQuarts),
            Content("UsDryPints", "dry pt (US)", Volume.FromUsDryPints, volume => volume.UsDryPints),
            Content("ImperialBushels", "bu (imp.)", Volume.FromImperialBushels, volume => volume.ImperialBushels),
            Content("MetricTablespoons", "metric tbsp", Volume.FromMetricTablespoons, volume => volume.MetricTablespoons),
            Content("AcreInches", "acre-inches", Volume.FromAcreInches, volume => volume.AcreInches),
        ];

        private static TradeUnit Rate(string name, string abbreviation, Func<double, AreaDensity> make, Func<AreaDensity, double> read) =>
            new(name, abbreviation, value => read(make(value)), value => make(value).GramsPerSquareMeter);

        private static TradeUnit Depth(string name, string abbreviation, Func<double, Length> make, Func<Length, double> read) =>
            new(name, abbreviation, value => read(make(value)), value => make(value).Meters);

        private static TradeUnit Content(string name, string abbreviation, Func<double, Volume> make, Func<Volume, double> read) =>
            new(name, abbreviation, value => read(make(value)), value => make(value).Liters);
    }
}
