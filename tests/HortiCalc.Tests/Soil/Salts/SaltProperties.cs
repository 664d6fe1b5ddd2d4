using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Evidence;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>Laws of salts, sodium, gypsum and leaching.</summary>
public class SaltProperties
{
    private static readonly SaltTolerance[] WithThreshold = [.. SaltTolerances.All.Where(row => row.Threshold is not null)];

    [Property]
    public bool SodiumAdsorptionRatio_AllIonsDiluted_FallsByTheRoot(PositiveInt sodium, PositiveInt calcium, PositiveInt dilution)
    {
        double times = Between(dilution, 1, 20);
        double na = Between(sodium, 1, 50);
        double ca = Between(calcium, 0.5, 20);
        return Near(Sar(na, ca, 2), Sar(na / times, ca / times, 2 / times) * Math.Sqrt(times));
    }

    [Property]
    public bool SodiumAdsorptionRatio_CalciumForMagnesium_IsTheSame(PositiveInt sodium, PositiveInt calcium, PositiveInt magnesium)
    {
        double na = Between(sodium, 1, 50);
        double ca = Between(calcium, 0.5, 20);
        double mg = Between(magnesium, 0.5, 20);
        return Near(Sar(na, ca, mg), Sar(na, mg, ca));
    }

    [Property]
    public bool ExchangeableSodium_ThereAndBack_IsTheRatio(PositiveInt seed)
    {
        double ratio = Between(seed, 1, 60);
        return Near(ratio, Salts.SodiumAdsorptionRatio(Salts.ExchangeableSodium(ratio).Value).Value, 1e-6);
    }

    [Property]
    public bool ExchangeableSodium_HigherRatio_IsMoreAndBelowAll(PositiveInt first, PositiveInt second)
    {
        double low = Math.Min(Between(first, 0, 60), Between(second, 0, 60));
        double high = Math.Max(Between(first, 0, 60), Between(second, 0, 60));
        Ratio less = Salts.ExchangeableSodium(low).Value;
        Ratio more = Salts.ExchangeableSodium(high).Value;
        return less.Percent >= 0 && less.Percent <= more.Percent && more.Percent < 50;
    }

    [Property]
    public bool AdjustedRatio_MoreBicarbonate_IsHigher(PositiveInt first, PositiveInt second, PositiveInt salt)
    {
        double low = Math.Min(Between(first, 0.2, 20), Between(second, 0.2, 20));
        double high = Math.Max(Between(first, 0.2, 20), Between(second, 0.2, 20));
        return Adjusted(8, 2, 1, low, Between(salt, 0.1, 8)) <= Adjusted(8, 2, 1, high, Between(salt, 0.1, 8)) + 1e-12;
    }

    [Property]
    public bool AdjustedRatio_SaltierWater_KeepsMoreCalciumAndIsLower(PositiveInt first, PositiveInt second)
    {
        double low = Math.Min(Between(first, 0.1, 8), Between(second, 0.1, 8));
        double high = Math.Max(Between(first, 0.1, 8), Between(second, 0.1, 8));
        return Adjusted(8, 2, 1, 4, high) <= Adjusted(8, 2, 1, 4, low) + 1e-12;
    }

    [Property]
    public void Extract_EveryLineThereAndBack_IsTheReading(PositiveInt seed) => Assert.All(ExtractConversions.All, line =>
    {
        double reading = line.LowestReading.MillisiemensPerCentimeter + Between(seed, 0, 15);
        Estimate<ElectricConductivity> saturated = line.SaturatedExtract(Ec(reading));
        Assert.Equal(reading, line.ThinExtract(saturated.Value).Value.MillisiemensPerCentimeter, 1e-9);
        Assert.True(saturated.Value.MillisiemensPerCentimeter >= reading - 1e-9);
    });

    [Property]
    public bool Slavich_MoreWaterAtSaturation_DilutesLess(PositiveInt first, PositiveInt second)
    {
        double low = Math.Min(Between(first, 15, 100), Between(second, 15, 100));
        double high = Math.Max(Between(first, 15, 100), Between(second, 15, 100));
        return ExtractConversions.SlavichPetterson(Ratio.FromPercent(low)).Slope >= ExtractConversions.SlavichPetterson(Ratio.FromPercent(high)).Slope;
    }

    [Property]
    public void MediumReading_ThereAndBack_IsTheReadingAndOfTheSameLevel(PositiveInt seed)
    {
        foreach (MediumExtract from in Enum.GetValues<MediumExtract>())
        {
            foreach (MediumExtract to in Enum.GetValues<MediumExtract>())
            {
                double reading = Between(seed, 0.013, 2.287);
                Estimate<ElectricConductivity> other = Salts.MediumReading(Ec(reading), from, to);
                Assert.Equal(reading, Salts.MediumReading(other.Value, to, from).Value.MillisiemensPerCentimeter, 1e-9);
                Assert.Equal(Salts.MediumLevel(Ec(reading), from).Value, Salts.MediumLevel(other.Value, to).Value);
                Assert.InRange(other.Value.MillisiemensPerCentimeter, other.Range!.Low.MillisiemensPerCentimeter, other.Range.High.MillisiemensPerCentimeter);
            }
        }
    }

    [Property]
    public bool Rank_Saltier_IsNeverLower(PositiveInt first, PositiveInt second)
    {
        double low = Math.Min(Between(first, 0, 30), Between(second, 0, 30));
        double high = Math.Max(Between(first, 0, 30), Between(second, 0, 30));
        return Salts.Rank(Ec(low)).Value <= Salts.Rank(Ec(high)).Value;
    }

    [Property]
    public void RelativeYield_EveryCrop_LiesFromZeroToAllAndFalls(PositiveInt first, PositiveInt second) => Assert.All(WithThreshold, crop =>
    {
        double low = Math.Min(Between(first, 0, 60), Between(second, 0, 60));
        double high = Math.Max(Between(first, 0, 60), Between(second, 0, 60));
        double better = crop.RelativeYield(Ec(low)).Value.Percent;
        double worse = crop.RelativeYield(Ec(high)).Value.Percent;
        Assert.InRange(worse, 0, better);
        Assert.InRange(better, 0, 100);
    });

    [Property]
    public void RelativeYield_PrintedRange_HoldsTheValue(PositiveInt seed) => Assert.All(
        WithThreshold.Select(crop => crop.RelativeYield(Ec(Between(seed, 0, 20)))).Where(yield => yield.Range is not null),
        yield => Assert.InRange(yield.Value.Percent, yield.Range!.Low.Percent - 1e-9, yield.Range.High.Percent + 1e-9));

    [Property]
    public void SalinityAt_ThenYield_IsTheYield(PositiveInt seed) => Assert.All(WithThreshold, crop =>
    {
        double yield = Between(seed, 0, 100);
        ElectricConductivity salinity = crop.SalinityAt(Ratio.FromPercent(yield)).Value;
        Assert.Equal(yield, crop.RelativeYield(salinity).Value.Percent, 1e-6);
    });

    [Property]
    public void LeachingRequirement_EveryForm_RisesWithTheWaterAndFallsWithTheCrop(PositiveInt water, PositiveInt more, PositiveInt allowed) =>
        Assert.All(LeachingMethod.All, method =>
        {
            double ec = Between(water, 0.1, 1.4);
            double crop = Between(allowed, 3.1, 8);
            double share = Leaching(ec, crop, method);
            Assert.InRange(share, 0, 100);
            Assert.True(Leaching(ec + Between(more, 0, 1), crop, method) >= share);
            Assert.True(Leaching(ec, crop + Between(more, 0, 1), method) <= share);
        });

    [Property]
    public bool LeachingRequirement_Rhoades_IsTheFractionThatHoldsTheSoilThere(PositiveInt water, PositiveInt allowed)
    {
        double ec = Between(water, 0.5, 2);
        double crop = Between(allowed, 1.5, 6);
        Ratio share = Salts.LeachingRequirement(Ec(ec), Ec(crop), LeachingMethod.Rhoades).Value;
        return Near(crop, Salts.SoilSalinity(Ec(ec), share).Value.MillisiemensPerCentimeter);
    }

    [Property]
    public bool WaterWithLeaching_LessWhatRunsThrough_IsTheUse(PositiveInt use, PositiveInt share)
    {
        double fraction = Between(share, 0, 0.9);
        Length given = Salts.WaterWithLeaching(Length.FromMillimeters(Between(use, 1, 1000)), Ratio.FromDecimalFractions(fraction));
        return Near(Between(use, 1, 1000), given.Millimeters * (1 - fraction));
    }

    [Property]
    public bool GypsumRequirement_AnyLayer_IsInProportionToSodiumDepthAndDensityAndAgainstPurity(PositiveInt sodium, PositiveInt depth, PositiveInt purity)
    {
        double one = Gypsum(1, 10, 1.2, 100);
        return Near(
            one * Between(sodium, 0, 10) * Between(depth, 5, 60) / 10 * (1.5 / 1.2) / Between(purity, 0.5, 1),
            Gypsum(Between(sodium, 0, 10), Between(depth, 5, 60), 1.5, 100 * Between(purity, 0.5, 1)));
    }

    [Property]
    public bool SodiumToReplace_AtOrBelowTheTarget_IsZeroAndNeverMoreThanTheSodium(PositiveInt now, PositiveInt target)
    {
        double share = Between(now, 0, 100);
        double wanted = Between(target, 0, 100);
        double charge = Salts.SodiumToReplace(
            ExchangeableCharge.FromCentimolesPerKilogram(20), Ratio.FromPercent(share), Ratio.FromPercent(wanted)).CentimolesPerKilogram;
        return share <= wanted ? charge == 0 : charge > 0 && charge <= 20 * share / 100 + 1e-9;
    }

    [Property]
    public void Units_OtherThanOurs_GiveTheSame(PositiveInt seed)
    {
        double ec = Between(seed, 0.1, 4.9);
        ElectricConductivity micro = ElectricConductivity.FromMicrosiemensPerCentimeter(ec * 1000);
        ElectricConductivity siemens = ElectricConductivity.FromSiemensPerMeter(ec / 10);
        Assert.Equal(
            Salts.DissolvedSolids(micro, DissolvedSolidsMethod.Irrigation).Value.MilligramsPerLiter,
            Salts.DissolvedSolids(siemens, DissolvedSolidsMethod.Irrigation).Value.MilligramsPerLiter,
            1e-9);
        Assert.Equal(
            WithThreshold[0].RelativeYield(micro).Value.Percent, WithThreshold[0].RelativeYield(Ec(ec)).Value.Percent, 1e-9);
    }

    [Property]
    public bool DissolvedSolids_ThereAndBack_IsTheConductivity(PositiveInt seed)
    {
        double ec = Between(seed, 0, 5);
        return DissolvedSolidsMethod.All.Where(method => method.Method.Domain.Contains("conductivity", ec)).All(method => Near(
            ec, Salts.ConductivityOfSolids(Salts.DissolvedSolids(Ec(ec), method).Value, method).Value.MillisiemensPerCentimeter));
    }

    [Property]
    public void BoronYield_MoreBoron_IsNeverMoreAndStaysInBounds(PositiveInt first, PositiveInt second) => Assert.All(
        BoronTolerances.All.Where(row => row.Loss is not null),
        row =>
        {
            double low = Math.Min(Between(first, 0, 40), Between(second, 0, 40));
            double high = Math.Max(Between(first, 0, 40), Between(second, 0, 40));
            double better = row.RelativeYield(MassConcentration.FromMilligramsPerLiter(low)).Value.Percent;
            Assert.InRange(row.RelativeYield(MassConcentration.FromMilligramsPerLiter(high)).Value.Percent, 0, better);
            Assert.InRange(better, 0, 100);
        });

    [Property]
    public void BoronBearing_AContentInsideAPrintedRange_IsTheClassOfTheCrop(PositiveInt seed) => Assert.All(
        BoronTolerances.All.Where(row => row.ThresholdHigh.MilligramsPerLiter > row.Threshold.MilligramsPerLiter),
        row => Assert.Equal(
            row.Group,
            BoronTolerances.Bearing(MassConcentration.FromMilligramsPerLiter(
                Between(seed, row.Threshold.MilligramsPerLiter + 0.001, row.ThresholdHigh.MilligramsPerLiter - 0.001))).Value));

    [Property]
    public bool Findings_MoreChloride_IsNeverLessRestricted(PositiveInt first, PositiveInt second)
    {
        double low = Math.Min(Between(first, 0, 20), Between(second, 0, 20));
        double high = Math.Max(Between(first, 0, 20), Between(second, 0, 20));
        return Restrictions(low).Zip(Restrictions(high)).All(pair => pair.First <= pair.Second);
    }

    private static IEnumerable<WaterRestriction> Restrictions(double chloride) =>
        new IrrigationWater { Chloride = VolumetricCharge.FromCentimolesPerLitre(chloride / 10) }.Findings.Select(finding => finding.Restriction.Value);

    private static double Leaching(double water, double allowed, LeachingMethod method) =>
        Salts.LeachingRequirement(Ec(water), Ec(allowed), method).Value.Percent;

    private static double Gypsum(double sodium, double centimetres, double density, double percent) => Salts.GypsumRequirement(
        ExchangeableCharge.FromCentimolesPerKilogram(sodium),
        new SoilLayer(Length.FromCentimeters(centimetres), Density.FromGramsPerCubicCentimeter(density)),
        Ratio.FromPercent(percent),
        GypsumMethod.Ali).Value.GramsPerSquareMeter;

    private static double Sar(double sodium, double calcium, double magnesium) => Salts.SodiumAdsorptionRatio(Meq(sodium), Meq(calcium), Meq(magnesium));

    private static double Adjusted(double sodium, double calcium, double magnesium, double bicarbonate, double ec) =>
        Salts.AdjustedSodiumAdsorptionRatio(Meq(sodium), Meq(calcium), Meq(magnesium), Meq(bicarbonate), Ec(ec)).Value;

    private static VolumetricCharge Meq(double value) => VolumetricCharge.FromCentimolesPerLitre(value / 10);

    private static ElectricConductivity Ec(double decisiemens) => ElectricConductivity.FromMillisiemensPerCentimeter(decisiemens);

    private static bool Near(double expected, double actual, double relative = 1e-9) => Math.Abs(expected - actual) <= relative * Math.Max(1, Math.Abs(expected));
}
