using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>Laws of the lime requirement by buffers, cations, buffer capacity and rules per pH unit.</summary>
public class LimeMethodProperties
{
    private static readonly double[] OregonGoals = [5.6, 6.0, 6.4, 6.8, 7.2];

    [Property]
    public bool Requirement_OregonSikora_FallsAsTheBufferRisesAndRisesWithTheTarget(PositiveInt first, PositiveInt second, PositiveInt goal)
    {
        double low = Math.Min(Between(first, 4.8, 6.9), Between(second, 4.8, 6.9));
        double high = Math.Max(Between(first, 4.8, 6.9), Between(second, 4.8, 6.9));
        int index = goal.Get % 4;
        return Sikora(low, OregonGoals[index]) >= Sikora(high, OregonGoals[index]) && Sikora(low, OregonGoals[index + 1]) >= Sikora(low, OregonGoals[index]);
    }

    [Property]
    public bool Requirement_Iowa_FallsAsTheBufferRises(PositiveInt first, PositiveInt second)
    {
        double low = Math.Min(Between(first, 5.8, 7), Between(second, 5.8, 7));
        double high = Math.Max(Between(first, 5.8, 7), Between(second, 5.8, 7));
        return Smp(low, 6.5, LimingMethod.Iowa) >= Smp(high, 6.5, LimingMethod.Iowa) && Smp(low, 6.9, LimingMethod.Iowa) >= Smp(high, 6.9, LimingMethod.Iowa);
    }

    [Property]
    public bool Requirement_Teagasc_FallsToZeroAtItsTargetAndStays(PositiveInt seed)
    {
        double buffer = Between(seed, 5, 7.5);
        return Near(Smp(buffer, 6.3, LimingMethod.Teagasc), Math.Max(0, 6.7 - buffer) * 1250);
    }

    [Property]
    public bool Requirement_PerPhUnit_IsProportionalToTheRise(PositiveInt ph, PositiveInt rise, PositiveInt texture)
    {
        double current = Between(ph, 5, 6.4);
        double units = Between(rise, 0.1, 0.5);
        return Near(
            2 * GramsPerSquareMetre(ByTexture(current, Texture(texture)), current + units, LimingMethod.UkPerPhUnit),
            GramsPerSquareMetre(ByTexture(current, Texture(texture)), current + 2 * units, LimingMethod.UkPerPhUnit));
    }

    // The nine values of the garden table are the rule per pH unit to 6.7, to the hundred.
    [Property]
    public bool Requirement_UkGardenTable_IsTheRulePerPhUnitToAFifthAbove(PositiveInt row, PositiveInt texture)
    {
        double current = 5 + row.Get % 3 * 0.5;
        double table = GramsPerSquareMetre(ByTexture(current, Texture(texture)), 6.5, LimingMethod.UkGardenTexture);
        return Math.Abs(table - GramsPerSquareMetre(ByTexture(current, Texture(texture)), 6.7, LimingMethod.UkPerPhUnit)) <= 50 + 1e-9;
    }

    [Property]
    public bool Requirement_ContinuousMethods_FallToZeroAtTheTarget(PositiveInt ph, PositiveInt texture)
    {
        double target = Between(ph, 5.6, 6.4);
        SoilReport soil = Full(target - 1e-9, 3, Texture(texture));
        LimingMethod[] methods = [LimingMethod.UkPerPhUnit, LimingMethod.BufferCapacity, LimingMethod.AdamsEvans, LimingMethod.NorthCarolina()];
        return methods.All(method => GramsPerSquareMetre(soil, target, method) is >= 0 and < 1e-3);
    }

    [Property]
    public bool Requirement_BufferCapacity_IsProportionalToCapacityRiseAndDensity(PositiveInt capacity, PositiveInt rise, PositiveInt density)
    {
        double milligrams = Between(capacity, 100, 1500);
        double units = Between(rise, 0.1, 2);
        double kilograms = Between(density, 800, 1700);
        SoilReport soil = new()
        {
            PhInWater = new Ph(5),
            LimeBufferCapacity = MassFraction.FromMilligramsPerKilogram(milligrams),
            BulkDensity = Density.FromKilogramsPerCubicMeter(kilograms),
        };
        return Near(GramsPerSquareMetre(soil, 5 + units, LimingMethod.BufferCapacity), milligrams * units * kilograms * 0.15 / 1000);
    }

    [Property]
    public bool Requirement_BrazilBaseSaturation_BringsTheBasesToTheTarget(PositiveInt bases, PositiveInt acidity, PositiveInt target)
    {
        double held = Between(bases, 0.1, 8);
        double reserve = Between(acidity, 0.1, 12);
        double wanted = Between(target, 1, 99) / 100;
        SoilReport soil = new() { Cations = Cations(held, 0, 0.5, reserve) };
        double added = GramsPerSquareMetre(soil, 6.5, LimingMethod.BrazilBaseSaturation(Ratio.FromDecimalFractions(wanted))) / 100;
        double after = (held + added) / (held + reserve);
        return added >= 0 && (added == 0 ? held / (held + reserve) >= wanted - 1e-9 : Near(after, wanted));
    }

    [Property]
    public bool Requirement_BrazilAluminium_IsItsTwoPartsAndNeverNegative(
        PositiveInt aluminium, PositiveInt calcium, PositiveInt magnesium, PositiveInt factor, PositiveInt tolerated)
    {
        double al = Between(aluminium, 0, 4);
        double ca = Between(calcium, 0, 4);
        double mg = Between(magnesium, 0, 1);
        double y = Between(factor, 0, 4);
        double stood = Between(tolerated, 0, 100) / 100;
        LimingMethod method = LimingMethod.BrazilAluminium(y, Ratio.FromDecimalFractions(stood), VolumetricCharge.FromCentimolesPerLitre(2));
        double expected = y * Math.Max(0, al - stood * (al + ca + mg)) + Math.Max(0, 2 - (ca + mg));
        return Near(GramsPerSquareMetre(new SoilReport { Cations = Cations(ca, mg, al, 20) }, 6, method), expected * 100);
    }

    // The factor is 2 only where 1.5 would give more than the aluminium.
    [Property]
    public bool Requirement_Cochrane_FollowsTheRuleOfItsFactor(PositiveInt aluminium, PositiveInt calcium, PositiveInt magnesium, PositiveInt tolerated)
    {
        double al = Between(aluminium, 0, 5);
        double ca = Between(calcium, 0, 5);
        double mg = Between(magnesium, 0, 2);
        double ras = Between(tolerated, 0, 100) / 100;
        double excess = al - ras * (al + ca + mg);
        double expected = excess <= 0 ? 0 : 1.5 * excess > al ? 2 * excess : 1.5 * excess;
        SoilReport soil = new() { Cations = Cations(ca, mg, al, 20) };
        return Near(GramsPerSquareMetre(soil, 6, LimingMethod.Cochrane(Ratio.FromDecimalFractions(ras))), expected * 100);
    }

    [Property]
    public bool Requirement_Saturation_TakesNoNoticeOfTheTarget(PositiveInt first, PositiveInt second)
    {
        SoilReport soil = Full(5, 3, SoilTexture.Loam);
        return LimingMethod.All.Where(method => !method.AimsAtPh).All(method =>
            GramsPerSquareMetre(soil, Between(first, 3, 8), method) == GramsPerSquareMetre(soil, Between(second, 3, 8), method));
    }

    [Property]
    public bool SoilCations_FromMass_AreTheSameTimesTheDensity(PositiveInt charge, PositiveInt density)
    {
        double centimoles = Between(charge, 0.1, 10);
        double kilograms = Between(density, 700, 1700);
        ExchangeableCharge each = ExchangeableCharge.FromCentimolesPerKilogram(centimoles);
        SoilCations cations = SoilCations.FromMass(each, each, each, each, Density.FromKilogramsPerCubicMeter(kilograms), each);
        return Near(cations.Calcium.CentimolesPerLitre, centimoles * kilograms / 1000)
            && Near(cations.BaseSaturation!.Value.Percent, 75)
            && Near(cations.AluminiumSaturation!.Value.Percent, 25);
    }

    [Property]
    public bool Compare_AnyReport_AnswersOrGivesAReasonForEveryMethod(PositiveInt ph, PositiveInt goal, PositiveInt acidity, PositiveInt texture, PositiveInt depth)
    {
        SoilReport soil = Full(Between(ph, 4, 7.4), Between(acidity, 0, 30), Texture(texture));
        Length wanted = Length.FromCentimeters(Between(depth, 5, 40));
        LimeComparison comparison = Liming.Compare(soil, new Ph(5.6 + goal.Get % 10 * 0.1), wanted, LimingMaterial.Dolomite);
        return comparison.Answers.Count + comparison.Refusals.Count == LimingMethod.All.Count
            && comparison.Answers.All(answer => answer.Material == LimingMaterial.Dolomite && answer.Grams() >= 0)
            && comparison.Refusals.All(refusal => refusal.Reason.Length > 0);
    }

    [Property]
    public bool Compare_TwiceTheDepth_DoublesWhatHasADepthAndLeavesTheRest(PositiveInt ph, PositiveInt depth)
    {
        SoilReport soil = Full(Between(ph, 5, 6), 5, SoilTexture.SiltLoam);
        double centimetres = Between(depth, 5, 20);
        LimeComparison once = Liming.Compare(soil, Neutralish, Length.FromCentimeters(centimetres));
        LimeComparison twice = Liming.Compare(soil, Neutralish, Length.FromCentimeters(2 * centimetres));
        return once.Answers.Zip(twice.Answers).All(pair => Near(pair.Second.Grams(), pair.First.Grams() * (pair.First.Depth is null ? 1 : 2)));
    }

    private static double Sikora(double buffer, double target) =>
        GramsPerSquareMetre(new SoilReport { SikoraBufferPh = new Ph(buffer) }, target, LimingMethod.OregonSikora);

    private static double Smp(double buffer, double target, LimingMethod method) =>
        GramsPerSquareMetre(new SoilReport { SmpBufferPh = new Ph(buffer) }, target, method);
}
