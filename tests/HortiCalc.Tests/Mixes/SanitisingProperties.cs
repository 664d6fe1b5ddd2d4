using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Laws of chlorine in water, of injection, of loss and of what must not meet.</summary>
public class SanitisingProperties
{
    private static readonly MixIngredient[] Ingredients =
    [
        MixIngredients.HouseholdBleach, MixIngredients.CalciumHypochlorite, MixIngredients.Vinegar, MixIngredients.CitricAcid, MixIngredients.Ammonia,
        MixIngredients.AmmoniumFertiliser, MixIngredients.RubbingAlcohol, MixIngredients.HydrogenPeroxide, MixIngredients.ConcentratedHydrogenPeroxide,
        MixIngredients.QuaternaryAmmonium, MixIngredients.LiquidSoap, MixIngredients.HorticulturalOil, MixIngredients.WettableSulfur, MixIngredients.LimeSulfur,
        MixIngredients.BakingSoda, MixIngredients.PeraceticAcid, MixIngredients.CopperSulfate, MixIngredients.HydratedLime, MixIngredients.NeemOil,
        MixIngredients.CalciumNitrate, MixIngredients.MagnesiumSulfate, MixIngredients.PotassiumSulfate, MixIngredients.PotassiumNitrate,
        MixIngredients.MonopotassiumPhosphate, MixIngredients.MonoammoniumPhosphate, MixIngredients.AmmoniumSulfate, MixIngredients.IronSulfate,
        MixIngredients.Water,
    ];

    private static Ph AnyPh(PositiveInt value) => new(5 + (value.Get % 5001 / 1000.0));

    private static HypochloriteLabel Label(PositiveInt value) => HypochloriteLabel.Trade(Ratio.FromPercent(1 + (value.Get % 150 / 10.0)));

    [Property]
    public bool Share_HigherPh_IsSmaller(PositiveInt pH)
    {
        double value = 5 + (pH.Get % 4000 / 1000.0);
        return HypochlorousAcid.Share(new Ph(value + 0.5), HypochlorousConstant.UsGeologicalSurvey).Value
            < HypochlorousAcid.Share(new Ph(value), HypochlorousConstant.UsGeologicalSurvey).Value;
    }

    [Property]
    public bool Share_OfEachConstant_LiesInTheRangeOfThePublishedOnes(PositiveInt pH, byte which)
    {
        HypochlorousConstant constant = (HypochlorousConstant)(which % 3);
        Estimate<Ratio> share = HypochlorousAcid.Share(AnyPh(pH), constant);
        return share.Range!.Low <= share.Value && share.Value <= share.Range.High;
    }

    [Property]
    public bool PhFor_TheShareOfAPh_IsThatPh(PositiveInt pH, byte which)
    {
        HypochlorousConstant constant = (HypochlorousConstant)(which % 2);

        // Away from the ends of the domain, where the way back could fall outside by a rounding.
        Ph value = new(5.1 + (pH.Get % 4801 / 1000.0));
        return Math.Abs(HypochlorousAcid.PhFor(HypochlorousAcid.Share(value, constant).Value, constant).Value.Value - value.Value) < 1e-6;
    }

    [Property]
    public bool Share_ColderWater_HasMoreOfTheAcid(PositiveInt pH, byte celsius)
    {
        double cold = 5 + (celsius % 25);
        return HypochlorousAcid.Share(AnyPh(pH), Temperature.FromDegreesCelsius(cold + 5)).Value
            < HypochlorousAcid.Share(AnyPh(pH), Temperature.FromDegreesCelsius(cold)).Value;
    }

    [Property]
    public bool Bleach_InjectedThenMeasured_IsTheLevelWanted(PositiveInt flow, PositiveInt level, PositiveInt label)
    {
        VolumeFlow water = VolumeFlow.FromLitersPerMinute(1 + (flow.Get % 2000));
        MassConcentration wanted = MassConcentration.FromMilligramsPerLiter(0.5 + (level.Get % 500));
        VolumeFlow pump = ChlorineInjection.Bleach(water, wanted, Label(label)).Value;
        return Near.Equal(ChlorineInjection.LevelOf(water, pump, Label(label)).Value.MilligramsPerLiter, wanted.MilligramsPerLiter);
    }

    [Property]
    public bool Bleach_TwiceTheFlowOrLevel_IsTwiceThePump(PositiveInt flow, PositiveInt level, PositiveInt label)
    {
        double litres = 1 + (flow.Get % 2000);
        double milligrams = 0.5 + (level.Get % 500);
        double Pump(double litresPerMinute, double milligramsPerLitre) => ChlorineInjection.Bleach(
            VolumeFlow.FromLitersPerMinute(litresPerMinute), MassConcentration.FromMilligramsPerLiter(milligramsPerLitre), Label(label)).Value.LitersPerMinute;
        return Near.Equal(Pump(2 * litres, milligrams), 2 * Pump(litres, milligrams)) && Near.Equal(Pump(litres, 2 * milligrams), 2 * Pump(litres, milligrams));
    }

    [Property]
    public bool InStore_LongerOrWarmer_LeavesNoMore(PositiveInt time, PositiveInt warmth)
    {
        double days = time.Get % 1700 / 10.0;
        double celsius = 21.2 + (warmth.Get % 140 / 10.0);
        double Left(double d, double c) => ChlorineLoss.InStore(Duration.FromDays(d), Temperature.FromDegreesCelsius(c)).Value.Percent;
        return Left(days + 10, celsius) < Left(days, celsius) && Left(days, celsius + 2) <= Left(days, celsius);
    }

    [Property]
    public bool AfterDilution_TwoTimes_Multiply(PositiveInt one, PositiveInt other, PositiveInt half)
    {
        Duration halfLife = Duration.FromHours(1 + (half.Get % 24));
        Duration first = Duration.FromHours(one.Get % 48);
        Duration second = Duration.FromHours(other.Get % 48);
        double Left(Duration time) => ChlorineLoss.AfterDilution(time, halfLife).Value.DecimalFractions;
        return Near.Equal(Left(first + second), Left(first) * Left(second));
    }

    [Property]
    public bool Dangers_OfTwo_AreTheSameInEitherOrder(byte one, byte other)
    {
        MixIngredient first = Ingredients[one % Ingredients.Length];
        MixIngredient second = Ingredients[other % Ingredients.Length];
        return Hazards.OfStock(first, second).SequenceEqual(Hazards.OfStock(second, first)) && Hazards.Of(first, second).SequenceEqual(Hazards.Of(second, first));
    }

    [Property]
    public bool Dangers_OfAList_AreThoseOfItsPairs(byte[] picks)
    {
        MixIngredient[] list = [.. picks.Take(8).Select(pick => Ingredients[pick % Ingredients.Length]).Distinct()];
        int pairs = 0;
        for (int one = 0; one < list.Length; one++)
        {
            for (int other = one + 1; other < list.Length; other++)
                pairs += Hazards.OfStock(list[one], list[other]).Count;
        }

        return Hazards.OfStock(list).Count == pairs;
    }

    [Property]
    public bool PlannedTank_OfAnyIngredients_PassesOnlyWithoutADanger(byte[] picks, bool isStock)
    {
        MixIngredient[] list = [MixIngredients.Water, .. picks.Take(5).Select(pick => Ingredients[pick % Ingredients.Length])];
        bool isDangerous = (isStock ? Hazards.OfStock(list) : Hazards.Of(list)).Count > 0;
        try
        {
            _ = new PlannedTank("tank", isStock, list);
            return !isDangerous;
        }
        catch (ArgumentException refused)
        {
            return isDangerous && refused.ParamName == "ingredients";
        }
    }

    [Property]
    public bool Dangers_OfStock_HoldThoseOfAnyTank(byte one, byte other)
    {
        MixIngredient first = Ingredients[one % Ingredients.Length];
        MixIngredient second = Ingredients[other % Ingredients.Length];
        return Hazards.Of(first, second).All(Hazards.OfStock(first, second).Contains);
    }
}
