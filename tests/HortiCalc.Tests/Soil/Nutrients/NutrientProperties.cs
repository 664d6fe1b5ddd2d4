using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>Laws of the arithmetic of soil tests and fertilisers.</summary>
public class NutrientProperties
{
    private static readonly Oxide[] Oxides = Enum.GetValues<Oxide>();

    [Property]
    public bool PerArea_ThereAndBack_IsTheContent(PositiveInt ppm, PositiveInt depth, PositiveInt density)
    {
        double content = Between(ppm, 0, 5000);
        SoilLayer layer = Layer(depth, density);
        return Near(content, layer.Content(layer.PerArea(MassFraction.FromMilligramsPerKilogram(content))).MilligramsPerKilogram);
    }

    [Property]
    public bool PerArea_AnyLayer_IsTenthOfPpmTimesCentimetresTimesDensityInKilogramsPerHectare(PositiveInt ppm, PositiveInt depth, PositiveInt density)
    {
        AreaDensity amount = Layer(depth, density).PerArea(MassFraction.FromMilligramsPerKilogram(Between(ppm, 0, 5000)));
        return Near(Between(ppm, 0, 5000) * Between(depth, 5, 60) * Between(density, 0.5, 1.8) / 10, amount.KilogramsPerHectare);
    }

    [Property]
    public bool PerArea_TwoLayersTogether_IsTheSum(PositiveInt ppm, PositiveInt first, PositiveInt second)
    {
        MassFraction content = MassFraction.FromMilligramsPerKilogram(Between(ppm, 0, 5000));
        double Amount(double centimetres) =>
            new SoilLayer(Length.FromCentimeters(centimetres), Density.FromGramsPerCubicCentimeter(1.3)).PerArea(content).GramsPerSquareMeter;
        return Near(Amount(Between(first, 5, 30) + Between(second, 5, 30)), Amount(Between(first, 5, 30)) + Amount(Between(second, 5, 30)));
    }

    [Property]
    public bool FurrowSlice_AnyContent_IsTwicePpmInPoundsPerAcre(PositiveInt ppm)
    {
        double content = Between(ppm, 1, 3000);
        AreaDensity amount = SoilLayer.FurrowSlice.PerArea(MassFraction.FromMilligramsPerKilogram(content));
        return Near(2 * content, (amount * Area.FromAcres(1)).Pounds, 1e-7);
    }

    [Property]
    public bool Layer_OtherUnits_GiveTheSame(PositiveInt depth, PositiveInt density)
    {
        SoilLayer metric = Layer(depth, density);
        SoilLayer us = new(
            Length.FromInches(Between(depth, 5, 60) / 2.54), Density.FromPoundsPerCubicFoot(metric.BulkDensity.PoundsPerCubicFoot));
        return Near(metric.Soil.GramsPerSquareMeter, us.Soil.GramsPerSquareMeter, 1e-6);
    }

    [Property]
    public bool Oxide_ThereAndBackByMolarMass_IsTheElement(PositiveInt which, PositiveInt amount)
    {
        Oxide oxide = Oxides[which.Get % Oxides.Length];
        AreaDensity element = AreaDensity.FromGramsPerSquareMeter(Between(amount, 0, 100));
        return Near(element.GramsPerSquareMeter, OxideFactors.MolarMass.ToElement(oxide, OxideFactors.MolarMass.ToOxide(oxide, element)).GramsPerSquareMeter);
    }

    [Property]
    public void Oxide_EveryPrintedFactor_LiesWithinOnePerCentOfTheMolarMasses(PositiveInt which)
    {
        Oxide oxide = Oxides[which.Get % Oxides.Length];
        foreach (OxideFactors factors in OxideFactors.All)
        {
            double? printed = TryOxide(factors, oxide);
            if (printed is { } value)
                Assert.InRange(value / OxideFactors.MolarMass.OxidePerElement(oxide), 0.99, 1.01);
        }
    }

    [Property]
    public bool Oxide_MassShareAndRate_FollowOneFactor(PositiveInt which, PositiveInt amount)
    {
        Oxide oxide = Oxides[which.Get % Oxides.Length];
        double value = Between(amount, 0, 50);
        double factor = OxideFactors.MolarMass.ElementPerOxide(oxide);
        return factor is > 0 and < 1
            && Near(value * factor, OxideFactors.MolarMass.ToElement(oxide, Mass.FromKilograms(value)).Kilograms)
            && Near(value * factor, OxideFactors.MolarMass.ToElement(oxide, MassFraction.FromPercent(value)).Percent);
    }

    [Property]
    public void Ion_ThereAndBack_IsTheContent(PositiveInt which, PositiveInt amount)
    {
        Ion ion = Ion.All[which.Get % Ion.All.Count];
        double value = Between(amount, 0, 4000);
        Assert.Equal(value, ion.Mass(ion.Charge(MassFraction.FromMilligramsPerKilogram(value))).MilligramsPerKilogram, 1e-6);
        Assert.Equal(value, ion.Mass(ion.Charge(MassConcentration.FromMilligramsPerLiter(value))).MilligramsPerLiter, 1e-6);
    }

    [Property]
    public bool Cations_AnyReport_HaveSharesThatAddUp(PositiveInt calcium, PositiveInt potassium, PositiveInt acidity)
    {
        ExchangeableCations cations = new(
            Charge(Between(calcium, 0.1, 20)), Charge(1.5), Charge(Between(potassium, 0, 2)), Charge(0.2), Charge(Between(acidity, 0, 12)));
        double sum = cations.Share(cations.Calcium).Percent + cations.Share(cations.Magnesium).Percent + cations.Share(cations.Potassium).Percent
            + cations.Share(cations.Sodium).Percent + cations.Share(cations.Acidity).Percent;
        return Near(100, sum)
            && Near(100 - cations.Share(cations.Acidity).Percent, cations.BaseSaturation.Percent)
            && cations.BaseSaturation.Percent is >= 0 and <= 100 + 1e-9;
    }

    [Property]
    public bool Cations_MoreAcidity_LowersTheBaseSaturation(PositiveInt first, PositiveInt second)
    {
        double low = Math.Min(Between(first, 0, 12), Between(second, 0, 12));
        double high = Math.Max(Between(first, 0, 12), Between(second, 0, 12));
        double Bases(double acidity) => new ExchangeableCations(Charge(5), Charge(1), Charge(0.3), Charge(0.1), Charge(acidity)).BaseSaturation.Percent;
        return Bases(high) <= Bases(low) + 1e-12;
    }

    [Property]
    public bool Fertilizer_ForAnAmount_GivesTheAmount(PositiveInt percent, PositiveInt released, PositiveInt amount)
    {
        Fertilizer product = new(
            "meal",
            [new NutrientContent(Nutrient.Nitrogen, MassFraction.FromPercent(Between(percent, 1, 46)))],
            nitrogenReleased: Ratio.FromPercent(Between(released, 10, 100)));
        AreaDensity wanted = AreaDensity.FromGramsPerSquareMeter(Between(amount, 0, 30));
        return Near(wanted.GramsPerSquareMeter, product.Gives(Nutrient.Nitrogen, product.For(Nutrient.Nitrogen, wanted)).GramsPerSquareMeter);
    }

    [Property]
    public bool Fertilizer_HalfReleased_NeedsTwice(PositiveInt percent, PositiveInt amount)
    {
        MassFraction share = MassFraction.FromPercent(Between(percent, 1, 46));
        Mass wanted = Mass.FromKilograms(Between(amount, 0.1, 10));
        Mass all = new Fertilizer("a", [new NutrientContent(Nutrient.Nitrogen, share)]).For(Nutrient.Nitrogen, wanted);
        Mass half = new Fertilizer("a", [new NutrientContent(Nutrient.Nitrogen, share)], nitrogenReleased: Ratio.FromPercent(50)).For(Nutrient.Nitrogen, wanted);
        return Near(2 * all.Kilograms, half.Kilograms);
    }

    [Property]
    public bool Mineralization_LongerTime_GivesMoreAndNeverMoreThanThePotential(PositiveInt first, PositiveInt second)
    {
        double early = Math.Min(Between(first, 0, 63), Between(second, 0, 63));
        double late = Math.Max(Between(first, 0, 63), Between(second, 0, 63));
        return NitrogenReleases.Kinetics.All(fit =>
            fit.Released(Duration.FromDays(early)).Value.MilligramsPerKilogram <= fit.Released(Duration.FromDays(late)).Value.MilligramsPerKilogram + 1e-9
            && fit.Released(Duration.FromDays(late)).Value.MilligramsPerKilogram <= fit.Potential.MilligramsPerKilogram + 1e-9);
    }

    [Property]
    public bool Mineralization_OverOneConstant_LeavesOneInE(PositiveInt seed)
    {
        double start = Between(seed, 0, 20);
        return NitrogenReleases.Kinetics.All(fit =>
        {
            double Left(double days) => fit.Potential.MilligramsPerKilogram - fit.Released(Duration.FromDays(days)).Value.MilligramsPerKilogram;
            return Math.Abs(Left(start + fit.TimeConstant.Days) - Left(start) / Math.E) < 1e-9;
        });
    }

    [Property]
    public bool CompostShare_EachYear_IsHalfTheOneBefore(PositiveInt seed)
    {
        int year = 1 + seed.Get % 49;
        return Near(OrganicNitrogen.CompostShare(year).Value.Percent / 2, OrganicNitrogen.CompostShare(year + 1).Value.Percent);
    }

    [Property]
    public bool FromManure_AnyRate_IsInProportionAndBelowTheTotal(PositiveInt rate, PositiveInt which)
    {
        FarmyardManure manure = (FarmyardManure)(which.Get % 5);
        double grams = Between(rate, 0, 5000);
        double nitrogen = OrganicNitrogen.FromManure(
            manure, AreaDensity.FromGramsPerSquareMeter(grams), ManureHandling.FreshDugIn, ManureSeason.Spring, sandy: true).Value.GramsPerSquareMeter;
        return Near(grams * 0.15 * OrganicNitrogen.ManureContent(manure).Value.DecimalFractions, nitrogen);
    }

    [Property]
    public bool PerArea_ByVolume_IsTheSameByMassInThatLayer(PositiveInt milligrams, PositiveInt depth, PositiveInt density)
    {
        MassConcentration content = MassConcentration.FromMilligramsPerLiter(Between(milligrams, 0, 4000));
        SoilLayer layer = Layer(depth, density);
        return Near(layer.PerArea(content).GramsPerSquareMeter, layer.PerArea(layer.Content(content)).GramsPerSquareMeter)
            && Near(content.MilligramsPerLiter, layer.PerVolume(layer.Content(content)).MilligramsPerLiter);
    }

    [Property]
    public bool PerArea_ByVolume_DoesNotDependOnTheDensity(PositiveInt milligrams, PositiveInt depth, PositiveInt first, PositiveInt second)
    {
        MassConcentration content = MassConcentration.FromMilligramsPerLiter(Between(milligrams, 0, 4000));
        double amount = Layer(depth, first).PerArea(content).KilogramsPerHectare;
        return Near(amount, Layer(depth, second).PerArea(content).KilogramsPerHectare) && Near(Between(milligrams, 0, 4000) * Between(depth, 5, 60) / 10, amount);
    }

    [Property]
    public bool Cations_PerVolume_HaveTheSameBaseSaturation(PositiveInt calcium, PositiveInt acidity, PositiveInt density)
    {
        ExchangeableCations cations = new(Charge(Between(calcium, 0.1, 20)), Charge(1.5), Charge(0.4), Charge(0.2), Charge(Between(acidity, 0.1, 12)));
        SoilCations volumes = cations.PerVolume(Density.FromGramsPerCubicCentimeter(Between(density, 0.5, 1.8)), Charge(0.1));
        return Near(cations.BaseSaturation.Percent, volumes.BaseSaturation!.Value.Percent)
            && Near(cations.Bases.CentimolesPerKilogram * Between(density, 0.5, 1.8), volumes.Calcium.CentimolesPerLitre + volumes.Magnesium.CentimolesPerLitre + volumes.Potassium.CentimolesPerLitre);
    }

    [Property]
    public bool NitrogenToAdd_AnyMaterial_BringsItToTheRatioOrIsNotNeeded(PositiveInt carbon, PositiveInt nitrogen, PositiveInt ratio)
    {
        double c = Between(carbon, 1, 55);
        double n = Between(nitrogen, 0, 8);
        double target = Between(ratio, 10, 40);
        double added = OrganicNitrogen.NitrogenToAdd(MassFraction.FromPercent(c), MassFraction.FromPercent(n), target).Percent;
        return added > 0 ? Near(target, c / (n + added)) : c <= target * n * (1 + 1e-12);
    }

    private static double? TryOxide(OxideFactors factors, Oxide oxide)
    {
        try
        {
            return factors.OxidePerElement(oxide);
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    private static SoilLayer Layer(PositiveInt depth, PositiveInt density) =>
        new(Length.FromCentimeters(Between(depth, 5, 60)), Density.FromGramsPerCubicCentimeter(Between(density, 0.5, 1.8)));

    private static ExchangeableCharge Charge(double value) => ExchangeableCharge.FromCentimolesPerKilogram(value);

    private static bool Near(double expected, double actual, double relative = 1e-9) => Math.Abs(expected - actual) <= relative * Math.Max(1, Math.Abs(expected));
}
