using HortiCalc.Evidence;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>The examples in the documentation comments, with what they promise.</summary>
public class MixExampleTests
{
    [Fact]
    public void Example_OfMixRatio_TellsTheTwoMeaningsApart()
    {
        MixRatio garden = MixRatio.PartsToParts(concentrate: 1, diluent: 9);
        MixRatio sheet = MixRatio.OneIn(10);
        bool same = garden == sheet;
        bool other = garden == MixRatio.OneIn(9);

        Assert.True(same);
        Assert.False(other);
    }

    [Fact]
    public void Example_OfStrength_DilutesAlcohol()
    {
        Strength alcohol = Strength.ByVolume(VolumeConcentration.FromPercent(91), "isopropyl alcohol");
        Strength target = Strength.ByVolume(VolumeConcentration.FromPercent(70), "isopropyl alcohol");
        MixBatch batch = Dilution.MakeUpTo(Volume.FromMilliliters(50), alcohol, target);

        Assert.Equal(38.5, batch.Concentrate.Milliliters, 1);
    }

    [Fact]
    public void Example_OfMakeUpTo_FillsABucket()
    {
        MixBatch bucket = Dilution.MakeUpTo(Volume.FromLiters(10), MixRatio.PartsToParts(1, 9));

        Assert.Equal(1, bucket.Concentrate.Liters, 12);
        Assert.Equal(9, bucket.Water.Liters, 12);
    }

    [Fact]
    public void Example_OfPowderFor_WeighsBleachingPowder()
    {
        Mass powder = Dilution.PowderFor(
            Volume.FromLiters(1),
            Strength.ByMass(MassFraction.FromPercent(35), ingredient: "available chlorine"),
            Strength.PerVolume(MassConcentration.FromGramsPerLiter(5), "available chlorine"));

        Assert.Equal(14.3, powder.Grams, 1);
    }

    [Fact]
    public void Example_OfProductFor_BringsARateToACan()
    {
        MassConcentration label = Dilution.RateOf(Mass.FromPounds(1), per: Volume.FromUsGallons(100));
        Mass dose = Dilution.ProductFor(label, Volume.FromLiters(5));

        Assert.Equal(6.0, dose.Grams, 1);
    }

    [Fact]
    public void Example_OfHypochloriteLabel_GivesAvailableChlorine()
    {
        HypochloriteLabel household = HypochloriteLabel.SodiumHypochlorite(MassFraction.FromPercent(6), HypochloriteDensities.SixPercent);

        Assert.Equal(61.7, household.AvailableChlorine.GramsPerLiter, 1);
    }

    [Fact]
    public void Example_OfHypochlorite_FillsABucket()
    {
        HypochloriteLabel bleach = HypochloriteLabel.SodiumHypochlorite(
            MassFraction.FromPercent(8.25), HypochloriteDensities.EightAndAQuarterPercent);
        Estimate<MixBatch> bucket = Hypochlorite.MakeUpTo(Volume.FromLiters(10), bleach, MassConcentration.FromMilligramsPerLiter(500));

        Assert.Equal(58, bucket.Value.Concentrate.Milliliters, 0);
    }

    [Fact]
    public void Example_OfHazards_FindsChlorineGas() => Assert.Contains(
        "household bleach + vinegar: chlorine gas",
        Hazards.Of(MixIngredients.HouseholdBleach, MixIngredients.Vinegar).Select(danger => danger.ToString()));

    [Fact]
    public void Example_OfMixRecipe_SaysAmountsFirst() => Assert.StartsWith(
        "1 L of household bleach and 9 L of water make 10 L; ",
        SanitisingRecipes.PotsAndToolsPennState.MakeUpTo(Volume.FromLiters(10)).ToString(),
        StringComparison.Ordinal);
}
