using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>Laws of the ways to find how much lime a soil needs.</summary>
public class LimingMethodProperties
{
    [Property]
    public bool Requirement_UkTable_FallsAsThePhRises(PositiveInt first, PositiveInt second, PositiveInt texture)
    {
        double low = Math.Min(Between(first, 5, 6), Between(second, 5, 6));
        double high = Math.Max(Between(first, 5, 6), Between(second, 5, 6));
        return GramsPerSquareMetre(ByTexture(low, Texture(texture)), 6.5, LimingMethod.UkGardenTexture)
            >= GramsPerSquareMetre(ByTexture(high, Texture(texture)), 6.5, LimingMethod.UkGardenTexture);
    }

    [Property]
    public bool Requirement_UkTable_RisesFromLightToHeavy(PositiveInt seed)
    {
        double ph = Between(seed, 5, 6);
        double light = GramsPerSquareMetre(ByTexture(ph, SoilTexture.Sand), 6.5, LimingMethod.UkGardenTexture);
        double loam = GramsPerSquareMetre(ByTexture(ph, SoilTexture.Loam), 6.5, LimingMethod.UkGardenTexture);
        double heavy = GramsPerSquareMetre(ByTexture(ph, SoilTexture.Clay), 6.5, LimingMethod.UkGardenTexture);
        return light < loam && loam < heavy;
    }

    [Property]
    public bool Requirement_UsTable_StaysBetweenTheRowsBesideIt(PositiveInt seed)
    {
        double ph = Between(seed, 4, 6);
        double above = Math.Floor(ph * 2) / 2;
        double below = Math.Ceiling(ph * 2) / 2;
        double rate = GramsPerSquareMetre(ByTexture(ph, SoilTexture.ClayLoam), 6.5, LimingMethod.UsGardenTexture);
        return rate <= GramsPerSquareMetre(ByTexture(above, SoilTexture.ClayLoam), 6.5, LimingMethod.UsGardenTexture) + 1e-9
            && rate >= GramsPerSquareMetre(ByTexture(below, SoilTexture.ClayLoam), 6.5, LimingMethod.UsGardenTexture) - 1e-9;
    }

    [Property]
    public bool Requirement_AustralianTable_AddsUpOverSteps(PositiveInt first, PositiveInt second, PositiveInt third)
    {
        double[] ph = [Between(first, 4.5, 6.5), Between(second, 4.5, 6.5), Between(third, 4.5, 6.5)];
        Array.Sort(ph);
        double Step(double from, double to) => GramsPerSquareMetre(ByTexture(from, SoilTexture.SandyLoam), to, LimingMethod.AustralianGardenTexture);
        return Near(Step(ph[0], ph[1]) + Step(ph[1], ph[2]), Step(ph[0], ph[2]));
    }

    [Property]
    public bool Requirement_AustralianTable_VanishesTowardsTheTarget(PositiveInt seed, PositiveInt texture)
    {
        double target = Between(seed, 4.6, 6.5);
        SoilTexture known = Texture(texture) is SoilTexture.Sand or SoilTexture.LoamySand ? SoilTexture.Sand : SoilTexture.ClayLoam;
        return GramsPerSquareMetre(ByTexture(target - 1e-7, known), target, LimingMethod.AustralianGardenTexture) < 1e-4;
    }

    [Property]
    public bool Requirement_PennStateTurf_RisesWithAcidityAndGoal(PositiveInt first, PositiveInt second)
    {
        double low = Math.Min(Between(first, 2, 25.7), Between(second, 2, 25.7));
        double high = Math.Max(Between(first, 2, 25.7), Between(second, 2, 25.7));
        double Rate(double acidity, double goal) => GramsPerSquareMetre(ByAcidity(5, acidity), goal, LimingMethod.PennStateTurf);
        return Rate(low, 7) <= Rate(high, 7) + 1e-9
            && Rate(low, 6.5) <= Rate(high, 6.5) + 1e-9
            && Rate(low, 6) <= Rate(high, 6) + 1e-9
            && Rate(low, 7) >= Rate(low, 6.5)
            && Rate(low, 6.5) >= Rate(low, 6);
    }

    // The table goes in steps of a whole milliequivalent (23 lb/1000 sq ft), printed in tens; the formula is smooth. Half a step and half a ten apart at most.
    [Property]
    public bool Requirement_PennStateTurfToPh7_IsTheAgronomicFormulaRounded(PositiveInt seed)
    {
        SoilReport soil = ByAcidity(5, Between(seed, 2, 25.7));
        Area thousandSquareFeet = Area.FromSquareFeet(1000);
        double turf = Liming.Requirement(soil, new Ph(7), LimingMethod.PennStateTurf).Over(thousandSquareFeet).Value.Pounds;
        double agronomic = Liming.Requirement(soil, new Ph(7), LimingMethod.PennStateAgronomic).Over(thousandSquareFeet).Value.Pounds;
        return Math.Abs(turf - agronomic) <= 0.5 * 1000 / 43.56 + 5;
    }

    [Property]
    public bool Requirement_PennStateAgronomicToPh7_IsProportionalToAcidity(PositiveInt seed, PositiveInt factor)
    {
        double acidity = Between(seed, 0.1, 10);
        double times = Between(factor, 1, 3);
        return Near(
            times * GramsPerSquareMetre(ByAcidity(5, acidity), 7, LimingMethod.PennStateAgronomic),
            GramsPerSquareMetre(ByAcidity(5, acidity * times), 7, LimingMethod.PennStateAgronomic));
    }

    [Property]
    public bool Requirement_NorthCarolina_IsProportionalToAcidity(PositiveInt seed, PositiveInt ph)
    {
        double current = Between(ph, 3.5, 5.9);
        double acidity = Between(seed, 0.1, 5);
        return Near(
            2 * GramsPerSquareMetre(ByBuffer(current, acidity), 6, LimingMethod.NorthCarolina()),
            GramsPerSquareMetre(ByBuffer(current, 2 * acidity), 6, LimingMethod.NorthCarolina()));
    }

    [Property]
    public bool Requirement_NorthCarolinaToTheBuffersPh_DoesNotDependOnThePresentPh(PositiveInt first, PositiveInt second) =>
        Near(
            GramsPerSquareMetre(ByBuffer(Between(first, 3.5, 6.59), 1.5), 6.6, LimingMethod.NorthCarolina()),
            GramsPerSquareMetre(ByBuffer(Between(second, 3.5, 6.59), 1.5), 6.6, LimingMethod.NorthCarolina()));

    [Property]
    public bool Requirement_NorthCarolina_IsTheSameByBufferPhAndByAcidity(PositiveInt seed, PositiveInt ph)
    {
        double bufferPh = Between(seed, 3, 6.6);
        double current = Between(ph, 3.5, 5.9);
        SoilReport byBufferPh = new() { PhInWater = new Ph(current), MehlichBufferPh = new Ph(bufferPh) };
        return Near(
            GramsPerSquareMetre(byBufferPh, 6, LimingMethod.NorthCarolina()),
            GramsPerSquareMetre(ByBuffer(current, (6.6 - bufferPh) * 4), 6, LimingMethod.NorthCarolina()));
    }

    [Property]
    public bool Requirement_NorthCarolina_IsLessTheCreditAndNeverBelowZero(PositiveInt applied, NonNegativeInt months, PositiveInt soilClass)
    {
        ResidualLime lime = new(
            AreaDensity.FromGramsPerSquareMeter(Between(applied, 0, 600)), months.Get % 20, (NorthCarolinaSoilClass)(soilClass.Get % 3));
        SoilReport soil = ByBuffer(5, 1.2);
        double without = GramsPerSquareMetre(soil, 6, LimingMethod.NorthCarolina());
        double with = GramsPerSquareMetre(soil, 6, LimingMethod.NorthCarolina(lime));
        return Near(with, Math.Max(0, without - lime.Credit.GramsPerSquareMeter));
    }

    [Property]
    public bool Credit_Months_ShrinksToZeroAndStays(PositiveInt applied, NonNegativeInt months, PositiveInt soilClass)
    {
        AreaDensity rate = AreaDensity.FromGramsPerSquareMeter(Between(applied, 1, 600));
        NorthCarolinaSoilClass known = (NorthCarolinaSoilClass)(soilClass.Get % 3);
        int month = months.Get % 30;
        double now = new ResidualLime(rate, month, known).Credit.GramsPerSquareMeter;
        double later = new ResidualLime(rate, month + 1, known).Credit.GramsPerSquareMeter;
        return now <= rate.GramsPerSquareMeter && later <= now && later >= 0 && (month < 13 || now == 0);
    }

    [Property]
    public bool Requirement_AtOrAboveTheTarget_IsZeroByEveryMethod(PositiveInt goal, PositiveInt excess, PositiveInt acidity, PositiveInt texture)
    {
        double target = Between(goal, 4, 7.5);
        SoilReport soil = Full(target + Between(excess, 0, 2), Between(acidity, 0, 40), Texture(texture));
        return LimingMethod.All.Where(method => method.AimsAtPh).All(method =>
        {
            LimeRequirement need = Liming.Requirement(soil, new Ph(target), method);
            return need.Grams() == 0 && need.Rate.Cautions.Single().Code == "lime.not-needed";
        });
    }

    [Property]
    public bool Requirement_AnyReport_AnswersExactlyWhereCanUseSaysSo(PositiveInt ph, PositiveInt goal, PositiveInt acidity, PositiveInt texture, PositiveInt members)
    {
        SoilReport full = Full(Between(ph, 3.5, 7.5), Between(acidity, 0, 30), Texture(texture));
        SoilReport soil = new()
        {
            PhInWater = (members.Get & 1) == 0 ? full.PhInWater : null,
            Texture = (members.Get & 2) == 0 ? full.Texture : null,
            ExchangeableAcidity = (members.Get & 4) == 0 ? full.ExchangeableAcidity : null,
            BufferAcidity = (members.Get & 8) == 0 ? full.BufferAcidity : null,
        };
        Ph target = new(5.5 + goal.Get % 5 * 0.5);
        return LimingMethod.All.All(method =>
        {
            bool can = method.CanUse(soil, target, out string reason);
            ArgumentException? refusal = (ArgumentException?)Record.Exception(() => Liming.Requirement(soil, target, method));
            return can == refusal is null && (refusal is null ? reason.Length == 0 : reason.Length > 0 && refusal.Message.StartsWith(reason, StringComparison.Ordinal))
                && !reason.Contains("(Parameter", StringComparison.Ordinal) && (method.Missing(soil).Count == 0 || !can);
        });
    }

    [Property]
    public bool Requirement_AnyAnswer_IsFiniteNotNegativeAndCarriesItsCautions(PositiveInt ph, PositiveInt goal, PositiveInt acidity, PositiveInt texture)
    {
        SoilReport soil = Full(Between(ph, 3.5, 7), Between(acidity, 0, 30), Texture(texture));
        Ph target = new(6 + goal.Get % 3 * 0.5);
        return LimingMethod.All.Where(method => method.CanUse(soil, target, out _)).All(method =>
        {
            LimeRequirement need = Liming.Requirement(soil, target, method);
            string[] codes = [.. need.Rate.Codes()];
            return double.IsFinite(need.Grams())
                && need.Grams() >= 0
                && codes.Length > 0
                && need.Rate.Method == method.Method
                && (need.Grams() == 0 || codes.Intersect(["lime.methods-differ", "lime.retest", "lime.manure", "lime.dust"]).Count() == 4);
        });
    }

    [Property]
    public bool Requirement_ExchangeableAcidity_IsTheSameInCentimolesAndMilliequivalents(PositiveInt seed)
    {
        double acidity = Between(seed, 2, 25.7);
        SoilReport centimoles = new() { PhInWater = new Ph(5), ExchangeableAcidity = ExchangeableCharge.FromCentimolesPerKilogram(acidity) };
        return Liming.Requirement(centimoles, new Ph(7), LimingMethod.PennStateTurf) == Liming.Requirement(ByAcidity(5, acidity), new Ph(7), LimingMethod.PennStateTurf);
    }
}
