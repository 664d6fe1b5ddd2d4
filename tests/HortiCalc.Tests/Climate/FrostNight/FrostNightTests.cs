using System.Globalization;
using System.Text.Json;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Tests.Units;
using UnitsNet;
using static HortiCalc.Tests.Climate.FrostNightSamples;

namespace HortiCalc.Tests.Climate;

public class FrostNightTests
{
    private static readonly HortiCalcJsonContext Json = HortiCalcJsonContext.Default;
    private static readonly IReadOnlyList<CriticalTemperature> AppleInBloom = CriticalTemperatures.For("Apple", "full bloom");
    private static readonly FrostNight Tonight = new(Evening(4, -3), Model, AppleInBloom);

    [Fact]
    public void Tonight_ClearEvening_JoinsItsParts()
    {
        Estimate<Temperature> minimum = Model.Minimum(C(4), C(-3));

        Assert.Equal(minimum, Tonight.Minimum);
        Assert.Equal(minimum.Value, Tonight.Cooling.Minimum);
        Assert.Equal(FrostType.Radiation, Tonight.Type.Value);
        Assert.Equal(29, Tonight.Harmful.DegreesFahrenheit, 1e-9); // the old standard of Michigan is the warmest
        Assert.Equal(Tonight.Cooling.DurationBelow(Tonight.Harmful), Tonight.DurationOfHarm);
        Assert.Equal(Tonight.Cooling.TimeReached(Tonight.Harmful), Tonight.TimeOfHarm);
        Assert.Equal(AppleInBloom.Select(line => line.DamageAt(minimum.Value)), Tonight.Damage);
        Assert.Equal(AppleInBloom.Select(line => line.DamageAt(minimum.Range!.Low)), Tonight.DamageAtColdEnd);
        Assert.Equal(Sprinkling.StartTemperature(C(-3), Tonight.Harmful).Value, Tonight.SprinklerStart!.Value);
        Assert.Equal(FrostAdvice.Protect, Tonight.Advice);
        Assert.Equal(Tonight.Cautions.Count, Tonight.Cautions.DistinctBy(caution => caution.Code).Count());
    }

    [Fact]
    public void Tonight_SprinklersStartBeforeTheCropIsHarmed()
    {
        Assert.True(Tonight.SprinklerStart!.Value.DegreesCelsius > Tonight.Harmful.DegreesCelsius);
        Assert.True(Tonight.SprinklerStartTime < Tonight.TimeOfHarm);
    }

    [Theory]
    [InlineData("Full bloom", FrostAdvice.Protect)]
    [InlineData("Tight cluster", FrostAdvice.Protect)]
    [InlineData("Half inch green", FrostAdvice.Watch)]
    [InlineData("Silver tip", FrostAdvice.Watch)]
    public void Advice_ByStage_FollowsTheMinimum(string stage, FrostAdvice advice) =>
        Assert.Equal(advice, new FrostNight(Evening(4, -3), Model, CriticalTemperatures.For("Apple", stage)).Advice);

    [Fact]
    public void Advice_WhereOnlyTheColdEndHarms_IsToBeReady()
    {
        double minimum = Tonight.Minimum.Value.DegreesCelsius;
        CriticalTemperature between = new("Invented", "", "bloom", "bloom", C(minimum - 0.1), C(minimum - 0.1), null, null, AppleInBloom[0].Source);
        Assert.Equal(FrostAdvice.BeReady, new FrostNight(Evening(4, -3), Model, [between]).Advice);
    }

    [Fact]
    public void ChanceOfHarm_ACropHarmedAboveTheEvening_IsCertain()
    {
        CriticalTemperature tender = new("Invented", "", "any", "any", C(6), C(6), null, null, AppleInBloom[0].Source);
        FrostNight night = new(Evening(4, -3), Model, [tender]);
        Assert.Equal(100, night.ChanceOfHarm.Value.Percent);
        Assert.Equal(night.Cooling.Start, night.TimeOfHarm);
        Assert.Null(night.SprinklerStart);
    }

    [Fact]
    public void Type_Marks_DecideOrLeaveItUnclear()
    {
        static FrostType Of(double milesPerHour, bool clear, bool? inversion) => FrostTypes.Of(Speed.FromMilesPerHour(milesPerHour), clear, inversion).Value;
        Assert.Equal(FrostType.Radiation, Of(2, true, null));
        Assert.Equal(FrostType.Unclear, Of(2, true, false));
        Assert.Equal(FrostType.Unclear, Of(2, false, null));
        Assert.Equal(FrostType.Advection, Of(10, true, null));
        Assert.Equal(FrostType.Advection, Of(10, false, false));
        Assert.Equal(FrostType.Unclear, Of(10, true, true));
        Assert.Equal(FrostType.Unclear, Of(5, true, null));
    }

    [Fact]
    public void Rules_ByHand_GiveTheirArithmetic()
    {
        Assert.Equal(-6.5, FrostRules.GrassMinimum(C(6), C(3), 6).Value.DegreesCelsius, 1e-9);
        Assert.Equal(4, FrostRules.MeanOfMaximumAndDewPoint(C(12), C(-4)).Value.DegreesCelsius, 1e-9);
        Assert.Contains(FrostRules.MeanOfMaximumAndDewPoint(C(12), C(-4)).Cautions, caution => caution.Code == "frost-night.uncorrected");
    }

    [Fact]
    public void Types_WrittenAndRead_AreEqual()
    {
        Assert.Equal(Tonight, JsonSerializer.Deserialize(JsonSerializer.Serialize(Tonight, Json.FrostNight), Json.FrostNight));
        Assert.Equal(Tonight.GetHashCode(), JsonSerializer.Deserialize(JsonSerializer.Serialize(Tonight, Json.FrostNight), Json.FrostNight)!.GetHashCode());
        Assert.Equal(Tonight.Cooling, JsonSerializer.Deserialize(JsonSerializer.Serialize(Tonight.Cooling, Json.NightCooling), Json.NightCooling));
        Assert.Equal(Tonight.Type, JsonSerializer.Deserialize(JsonSerializer.Serialize(Tonight.Type, Json.EstimateFrostType), Json.EstimateFrostType));
        Assert.Equal(Tonight.Damage[0], JsonSerializer.Deserialize(JsonSerializer.Serialize(Tonight.Damage[0], Json.FrostDamage), Json.FrostDamage));
        foreach (CriticalTemperature line in CriticalTemperatures.All)
            Assert.Equal(line, JsonSerializer.Deserialize(JsonSerializer.Serialize(line, Json.CriticalTemperature), Json.CriticalTemperature));
        foreach (FrostDefinition definition in FrostDefinitions.All)
            Assert.Equal(definition, JsonSerializer.Deserialize(JsonSerializer.Serialize(definition, Json.FrostDefinition), Json.FrostDefinition));
        foreach (CropBudNeed need in CriticalTemperatures.BudNeeds)
            Assert.Equal(need, JsonSerializer.Deserialize(JsonSerializer.Serialize(need, Json.CropBudNeed), Json.CropBudNeed));
        foreach (SprinklerStartMethod method in SprinklerStartMethod.All)
            Assert.Same(method, JsonSerializer.Deserialize(JsonSerializer.Serialize(method, Json.SprinklerStartMethod), Json.SprinklerStartMethod));
        foreach (RowCover cover in RowCover.All)
            Assert.Same(cover, JsonSerializer.Deserialize(JsonSerializer.Serialize(cover, Json.RowCover), Json.RowCover));
        Estimate<FrostOutlook> outlook = FrostRules.Outlook(C(3));
        Assert.Equal(outlook, JsonSerializer.Deserialize(JsonSerializer.Serialize(outlook, Json.EstimateFrostOutlook), Json.EstimateFrostOutlook));
        FrostEvening evening = new(
            new DateTime(2027, 4, 20, 20, 0, 0, DateTimeKind.Local), new DateTime(2027, 4, 21, 6, 0, 0), F(40), F(30), Speed.FromMilesPerHour(2), true, true, Pressure.FromMillibars(900));
        Assert.Equal(evening, JsonSerializer.Deserialize(JsonSerializer.Serialize(evening, Json.FrostEvening), Json.FrostEvening));
        Assert.Equal("\"Protect\"", JsonSerializer.Serialize(FrostAdvice.Protect, Json.FrostAdvice));
    }

    [Fact]
    public void ToString_CommaCulture_StaysInvariantAndTakesUsUnits()
    {
        using CultureScope comma = new("de-DE");
        string metric = Tonight.ToString();
        Assert.StartsWith("protect the crop: -3.8", metric, StringComparison.Ordinal);
        Assert.Contains("2027-04-21 06:05", metric, StringComparison.Ordinal);
        Assert.Contains("25", Tonight.ToString("U", CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.Contains("°F", Tonight.ToString("U", CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.Contains("0.503 × evening temperature + 0.0265 × dew point + -5.82 °C", Model.ToString(), StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => Tonight.ToString("X", null));
        Assert.Equal("3.2 °C, dew point -4.2 °C, to -3.1 °C", TenNights[0].ToString());
        Assert.Equal(
            "2027-04-20 20:10 to 2027-04-21 06:05: 39.2 °F, dew point 26.6 °F, wind 2.24 mph, clear", Tonight.Evening.ToString("U", CultureInfo.InvariantCulture));
        Assert.Equal("Apple: 10 % to 15 % of buds for a full crop [Utah State University Extension, Critical Temperatures for Frost Damage on Fruit Trees, IPM-012-11 (2011)]", CriticalTemperatures.BudNeeds.Single(need => need.Crop == "Apple").ToString());
    }

    [Fact]
    public void Equation_InFahrenheit_GivesTheSameMinimum()
    {
        // 0.502812 and 0.026472 are the same in both scales, the constant is not.
        string us = Model.ToString("U", CultureInfo.InvariantCulture);
        double constant = -5.821987 * 1.8 + 32 * (1 - 0.502812 - 0.026472);
        Assert.Contains($"+ {constant.ToString("0.00", CultureInfo.InvariantCulture)} °F", us, StringComparison.Ordinal);
    }
}
