using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>Laws of acidifying: rates, materials, depths, limits, free carbonate, fertilisers and media.</summary>
public class AcidifyingProperties
{
    private static readonly AcidifyingMaterial[] Materials =
    [
        AcidifyingMaterial.ElementalSulfur, AcidifyingMaterial.AmmoniumSulfate, AcidifyingMaterial.AluminiumSulfate(0),
        AcidifyingMaterial.AluminiumSulfate(14), AcidifyingMaterial.AluminiumSulfate(18), AcidifyingMaterial.IronSulfate(1), AcidifyingMaterial.IronSulfate(7),
    ];

    private static readonly AcidLimit[] Limits =
        [AcidLimit.PurdueTurf, AcidLimit.ClemsonLawn, AcidLimit.GardenBed, AcidLimit.BlueberrySurface, AcidLimit.BritishColumbia];

    [Property]
    public bool Requirement_AtOrBelowTheTarget_IsZeroBecauseNotNeeded(PositiveInt ph, PositiveInt lower, PositiveInt method, PositiveInt texture)
    {
        double target = Between(ph, 4, 9);
        AcidRequirement need = Acidifying.Requirement(
            ByTexture(Between(lower, 3, target), Texture(texture)), new Ph(target), AcidifyingMethod.All[method.Get % AcidifyingMethod.All.Count]);
        return Grams(need) == 0 && need.Rate.Cautions.Single().Code == "acid.not-needed";
    }

    [Property]
    public bool Requirement_Michigan_RisesWithThePh(PositiveInt first, PositiveInt second, PositiveInt texture)
    {
        double low = Math.Min(Between(first, 4.5, 7), Between(second, 4.5, 7));
        double high = Math.Max(Between(first, 4.5, 7), Between(second, 4.5, 7));
        return Michigan(low, Texture(texture)) <= Michigan(high, Texture(texture));
    }

    [Property]
    public bool Requirement_Michigan_RisesFromSandToClay(PositiveInt seed)
    {
        double ph = Between(seed, 4.6, 7);
        return Michigan(ph, SoilTexture.Sand) < Michigan(ph, SoilTexture.Loam) && Michigan(ph, SoilTexture.Loam) < Michigan(ph, SoilTexture.Clay);
    }

    [Property]
    public bool Requirement_Michigan_VanishesTowardsTheTarget(PositiveInt texture, PositiveInt hair) =>
        Michigan(4.5 + Between(hair, 0, 1e-6), Texture(texture)) < 1e-3;

    [Property]
    public bool Requirement_PerUnit_AddsUpOverSteps(PositiveInt first, PositiveInt second, PositiveInt third)
    {
        double[] ph = [Between(first, 5, 6), Between(second, 5, 6), Between(third, 5, 6)];
        Array.Sort(ph);
        double Step(double from, double to) =>
            Grams(Acidifying.Requirement(ByTexture(from, SoilTexture.Loam), new Ph(to), AcidifyingMethod.GardenSoil));
        return Near(Step(ph[2], ph[1]) + Step(ph[1], ph[0]), Step(ph[2], ph[0]));
    }

    [Property]
    public bool Requirement_BlueberryOnHeavySoil_IsTwiceThatOnSand(PositiveInt from, PositiveInt to)
    {
        Ph target = new(Between(to, 4, 5));
        double ph = Between(from, 5.01, 6);
        return Near(
            Grams(Acidifying.Requirement(ByTexture(ph, SoilTexture.Clay), target, AcidifyingMethod.Blueberry)),
            2 * Grams(Acidifying.Requirement(ByTexture(ph, SoilTexture.Sand), target, AcidifyingMethod.Blueberry)));
    }

    [Property]
    public bool As_ThereAndBack_GivesTheRateAgain(PositiveInt rate, PositiveInt to)
    {
        AcidRequirement need = Given(Between(rate, 1, 500));
        return Near(Grams(need.As(Materials[to.Get % Materials.Length]).As(AcidifyingMaterial.ElementalSulfur)), Grams(need));
    }

    [Property]
    public bool As_AnotherMaterial_NeutralisesTheSame(PositiveInt rate, PositiveInt from, PositiveInt to)
    {
        AcidifyingMaterial first = Materials[from.Get % Materials.Length];
        AcidifyingMaterial second = Materials[to.Get % Materials.Length];
        AcidRequirement need = Given(Between(rate, 0, 500), first);
        return Near(
            Grams(need.As(second)) * second.CarbonateNeutralised.DecimalFractions, Grams(need) * first.CarbonateNeutralised.DecimalFractions);
    }

    [Property]
    public bool As_EquivalentByMolarMass_IsTheSameAsByMaterial(PositiveInt rate, PositiveInt to)
    {
        AcidifyingMaterial material = Materials[to.Get % Materials.Length];
        AcidRequirement need = Given(Between(rate, 0, 500));
        return Near(Grams(need.As(AcidEquivalent.ByMolarMass(material))), Grams(need.As(material)));
    }

    [Property]
    public bool Hydrate_MoreWater_DoesLess(PositiveInt waters)
    {
        int iron = waters.Get % 7;
        int aluminium = waters.Get % 18;
        return AcidifyingMaterial.IronSulfate(iron + 1).CarbonateNeutralised.Percent < AcidifyingMaterial.IronSulfate(iron).CarbonateNeutralised.Percent
            && AcidifyingMaterial.AluminiumSulfate(aluminium + 1).CarbonateNeutralised.Percent < AcidifyingMaterial.AluminiumSulfate(aluminium).CarbonateNeutralised.Percent;
    }

    [Property]
    public bool WithPurity_AnyShare_TakesAsMuchMore(PositiveInt rate, PositiveInt share)
    {
        double percent = Between(share, 10, 100);
        AcidRequirement need = Given(Between(rate, 0, 500));
        return Near(Grams(need.As(AcidifyingMaterial.ElementalSulfur.WithPurity(Ratio.FromPercent(percent)))) * percent / 100, Grams(need));
    }

    [Property]
    public bool ForDepth_AnyDepth_IsProportionalInAnyUnit(PositiveInt from, PositiveInt to)
    {
        double assumed = Between(from, 5, 40);
        double inches = Between(to, 2, 16);
        AcidRequirement need = Given(100, depth: Length.FromCentimeters(assumed));
        return Near(Grams(need.ForDepth(Length.FromInches(inches))) * assumed, 100 * inches * 2.54)
            && Near(Grams(need.ForDepth(Length.FromCentimeters(inches * 2.54))), Grams(need.ForDepth(Length.FromInches(inches))));
    }

    [Property]
    public bool Over_TwoAreas_AddsUp(PositiveInt rate, PositiveInt first, PositiveInt second)
    {
        AcidRequirement need = Given(Between(rate, 0, 500));
        Area one = Area.FromSquareMeters(Between(first, 0, 100));
        Area two = Area.FromSquareFeet(Between(second, 0, 1000));
        return Near(need.Over(one).Value.Kilograms + need.Over(two).Value.Kilograms, need.Over(one + two).Value.Kilograms);
    }

    [Property]
    public bool Split_EveryLimit_AddsUpAndKeepsWithin(PositiveInt rate, PositiveInt limit, PositiveInt material)
    {
        AcidLimit chosen = Limits[limit.Get % Limits.Length];
        AcidRequirement sulfur = Given(Between(rate, 1, 1000));
        AcidSchedule schedule = sulfur.As(Materials[material.Get % Materials.Length]).Split(chosen);
        double each = schedule.Rates[0].Value.GramsPerSquareMeter * Grams(sulfur) / Grams(schedule.Requirement);
        return Near(schedule.Rates.Sum(part => part.Value.GramsPerSquareMeter), Grams(schedule.Requirement))
            && each <= chosen.Maximum.GramsPerSquareMeter * (1 + 1e-8)
            && (schedule.Count - 1) * chosen.Maximum.GramsPerSquareMeter < Grams(sulfur);
    }

    [Property]
    public bool Split_YearlyLimit_HoldsInEveryYear(PositiveInt rate)
    {
        AcidSchedule schedule = Given(Between(rate, 1, 1000)).Split(AcidLimit.PurdueTurf);
        double perYear = 10 * AreaDensity.FromPoundsPerThousandSquareFeet(1).GramsPerSquareMeter;
        return schedule.Years!.Value * perYear >= Grams(schedule.Requirement) * (1 - 1e-9) && schedule.Years <= schedule.Count;
    }

    [Property]
    public bool FreeCarbonate_AnyLayer_IsProportionalAndNeutralisesIt(PositiveInt share, PositiveInt depth, PositiveInt density)
    {
        MassFraction carbonate = MassFraction.FromPercent(Between(share, 0.1, 20));
        Length layer = Length.FromCentimeters(Between(depth, 5, 50));
        Density bulk = Density.FromKilogramsPerCubicMeter(Between(density, 800, 1800));
        AcidRequirement sulfur = Acidifying.FreeCarbonate(carbonate, layer, bulk);
        return Near(
                Grams(sulfur) * AcidifyingMaterial.ElementalSulfur.CarbonateNeutralised.DecimalFractions,
                carbonate.DecimalFractions * layer.Meters * bulk.KilogramsPerCubicMeter * 1000)
            && Near(Grams(Acidifying.FreeCarbonate(carbonate, layer * 2, bulk)), 2 * Grams(sulfur))
            && sulfur.Rate.Cautions.Any(caution => caution.Code == "acid.free-carbonate");
    }

    [Property]
    public bool Compare_AnySoil_AccountsForEveryMethodAndSpansThem(PositiveInt ph, PositiveInt target, PositiveInt texture)
    {
        AcidComparison all = Acidifying.Compare(ByTexture(Between(ph, 4, 8), Texture(texture)), new Ph(Between(target, 4, 7)));
        return all.Requirements.Count + all.Refusals.Count == AcidifyingMethod.All.Count
            && all.Requirements.All(need => need.Material == AcidifyingMaterial.ElementalSulfur
                && need.Rate.Value.GramsPerSquareMeter >= all.Spread!.Low.GramsPerSquareMeter
                && need.Rate.Value.GramsPerSquareMeter <= all.Spread.High.GramsPerSquareMeter);
    }

    [Property]
    public bool FertilizerAcidity_ByTheOtherBasisAndBack_IsTheSame(PositiveInt row, PositiveInt amount)
    {
        FertilizerAcidity[] known = [.. FertilizerAcidities.All.Where(acidity => acidity.Nitrogen is not null)];
        FertilizerAcidity acidity = known[row.Get % known.Length];
        AcidityBasis other = acidity.Basis == AcidityBasis.Material ? AcidityBasis.Nitrogen : AcidityBasis.Material;
        Mass kilograms = Mass.FromKilograms(Between(amount, 0, 100));
        return Near(acidity.By(other).By(acidity.Basis).LimeFor(kilograms).Value.Kilograms, acidity.LimeFor(kilograms).Value.Kilograms);
    }

    [Property]
    public bool MediumRate_AnyVolume_IsProportional(PositiveInt row, PositiveInt volume)
    {
        MediumRate rate = MediumRates.All[row.Get % MediumRates.All.Count];
        double litres = Between(volume, 0, 5000);
        return Near(rate.For(Volume.FromLiters(litres)).Value.Kilograms, rate.Low.KilogramsPerCubicMeter * litres / 1000);
    }

    private static double Michigan(double ph, SoilTexture texture) =>
        Grams(Acidifying.Requirement(ByTexture(ph, texture), new Ph(4.5), AcidifyingMethod.Michigan));

    private static AcidRequirement Given(double gramsPerSquareMetre, AcidifyingMaterial? material = null, Length? depth = null) =>
        Acidifying.FromRecommendation(
            AreaDensity.FromGramsPerSquareMeter(gramsPerSquareMetre), material ?? AcidifyingMaterial.ElementalSulfur, "a laboratory", depth);

    private static double Grams(AcidRequirement need) => need.Rate.Value.GramsPerSquareMeter;
}
