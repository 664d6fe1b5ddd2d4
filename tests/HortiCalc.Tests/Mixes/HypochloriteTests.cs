using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Bleach: what the label means, and batches with their cautions.</summary>
public class HypochloriteTests
{
    private static readonly Density Household = HypochloriteDensities.SixPercent;

    private static HypochloriteLabel Label(PositiveInt value) =>
        HypochloriteLabel.SodiumHypochlorite(MassFraction.FromPercent(1 + (value.Get % 1_400 / 100.0)), Household);

    [Fact]
    public void Labels_OfTheSameBottleOnThreeBases_GiveTheSameChlorine()
    {
        HypochloriteLabel byHypochlorite = HypochloriteLabel.SodiumHypochlorite(MassFraction.FromPercent(6), Household);
        HypochloriteLabel byChlorine = HypochloriteLabel.ChlorineByMass(byHypochlorite.AvailableChlorineByMass!.Value, Household);
        HypochloriteLabel byTrade = HypochloriteLabel.Trade(byHypochlorite.TradePercentage, Household);

        Assert.Equal(61.72, byHypochlorite.AvailableChlorine.GramsPerLiter, 2);
        Assert.Equal(byHypochlorite.AvailableChlorine.GramsPerLiter, byChlorine.AvailableChlorine.GramsPerLiter, 10);
        Assert.Equal(byHypochlorite.AvailableChlorine.GramsPerLiter, byTrade.AvailableChlorine.GramsPerLiter, 10);
        Assert.Equal(byChlorine.AvailableChlorineByMass!.Value.Percent, byTrade.AvailableChlorineByMass!.Value.Percent, 10);
    }

    [Fact]
    public void Trade_WithoutDensity_HasChlorinePerVolumeOnly()
    {
        HypochloriteLabel pool = HypochloriteLabel.Trade(Ratio.FromPercent(12.5));
        Assert.Equal(125, pool.AvailableChlorine.GramsPerLiter, 10);
        Assert.Null(pool.AvailableChlorineByMass);
    }

    [Fact]
    public void Convention_ForHouseholdBleach_IsWithinFivePercentOfTheChlorineByDefinition()
    {
        HypochloriteLabel convention = HypochloriteLabel.PercentAsWeightPerVolume(MassFraction.FromPercent(6));
        HypochloriteLabel defined = HypochloriteLabel.SodiumHypochlorite(MassFraction.FromPercent(6), Household);
        double ratio = defined.AvailableChlorine.GramsPerLiter / convention.AvailableChlorine.GramsPerLiter;
        Assert.InRange(ratio, 1.0, 1.05);
    }

    [Fact]
    public void StrengthOf_StrongerBleachInTheSameRecipe_IsFiftySevenPercentStronger()
    {
        MixRatio recipe = MixRatio.PartsToParts(1, 9);
        HypochloriteLabel oldBottle = HypochloriteLabel.SodiumHypochlorite(MassFraction.FromPercent(5.25), Household);
        HypochloriteLabel newBottle = HypochloriteLabel.SodiumHypochlorite(MassFraction.FromPercent(8.25), Household);
        double old = Hypochlorite.StrengthOf(oldBottle, recipe).Value.MilligramsPerLiter;
        double today = Hypochlorite.StrengthOf(newBottle, recipe).Value.MilligramsPerLiter;
        Assert.Equal(1.57, today / old, 2);
    }

    [Fact]
    public void Answers_AllOfThem_WarnOfAcidsAmmoniaFumesAndTheLabel()
    {
        HypochloriteLabel bleach = HypochloriteLabel.SodiumHypochlorite(MassFraction.FromPercent(6), Household);
        MassConcentration target = MassConcentration.FromMilligramsPerLiter(500);
        IReadOnlyList<Caution>[] answers =
        [
            Hypochlorite.MakeUpTo(Volume.FromLiters(10), bleach, target).Cautions,
            Hypochlorite.AddTo(Volume.FromLiters(10), bleach, target).Cautions,
            Hypochlorite.StrengthOf(bleach, MixRatio.OneIn(10)).Cautions,
            Hypochlorite.PowderFor(Volume.FromLiters(10), MassFraction.FromPercent(70), target).Cautions,
        ];
        foreach (IReadOnlyList<Caution> cautions in answers)
        {
            Assert.Contains(cautions, caution => caution.Code == "bleach.never-with-acid" && caution.Level == CautionLevel.Danger);
            Assert.Contains(cautions, caution => caution.Code == "bleach.never-with-ammonia" && caution.Level == CautionLevel.Danger);
            Assert.Contains(cautions, caution => caution.Code == "bleach.never-with-alcohol" && caution.Level == CautionLevel.Danger);
            Assert.Contains(cautions, caution => caution.Code == "mix.ventilate");
            Assert.Contains(cautions, caution => caution.Code == "bleach.corrodes");
            Assert.Contains(cautions, caution => caution.Code == "mix.label-decides");
        }
    }

    [Fact]
    public void Answers_ByTheConvention_NameItAsTheMethodAndSayWhatItLeavesOut()
    {
        Estimate<MassConcentration> level = Hypochlorite.StrengthOf(
            HypochloriteLabel.PercentAsWeightPerVolume(MassFraction.FromPercent(5.25)), MixRatio.OneIn(128));
        Assert.Equal(Hypochlorite.FromPercentAsWeightPerVolume, level.Method);
        Assert.Contains(level.Cautions, caution => caution.Code == "bleach.density-ignored");
        Assert.NotEqual(Hypochlorite.FromPercentAsWeightPerVolume, Hypochlorite.StrengthOf(Label(PositiveInt.NewPositiveInt(5)), MixRatio.OneIn(2)).Method);
    }

    [Property]
    public bool MakeUpTo_StrongerLabel_TakesLessBleach(PositiveInt weak, PositiveInt more, PositiveInt level)
    {
        HypochloriteLabel weaker = Label(weak);
        HypochloriteLabel stronger = HypochloriteLabel.SodiumHypochlorite(
            MassFraction.FromPercent(weaker.Percent.Percent + 0.25 + (more.Get % 5)), Household);
        MassConcentration target = MassConcentration.FromMilligramsPerLiter(1 + (level.Get % 8_000));
        return Hypochlorite.MakeUpTo(Volume.FromLiters(10), stronger, target).Value.Concentrate
            < Hypochlorite.MakeUpTo(Volume.FromLiters(10), weaker, target).Value.Concentrate;
    }

    [Property]
    public bool MakeUpTo_AndStrengthOf_AreInverse(PositiveInt label, PositiveInt level)
    {
        double milligramsPerLitre = 1 + (level.Get % 8_000);
        MixBatch batch = Hypochlorite.MakeUpTo(Volume.FromLiters(7), Label(label), MassConcentration.FromMilligramsPerLiter(milligramsPerLitre)).Value;
        return Near.Equal(Hypochlorite.StrengthOf(Label(label), batch.Ratio).Value.MilligramsPerLiter, milligramsPerLitre);
    }

    [Property]
    public bool ChlorineAndHypochlorite_ByMass_AreInverse(PositiveInt value)
    {
        MassFraction share = MassFraction.FromPercent(value.Get % 1_000 / 10.0);
        return Near.Equal(Hypochlorite.SodiumHypochloriteByMass(Hypochlorite.AvailableChlorineByMass(share)).Percent, share.Percent);
    }

    [Property]
    public bool Labels_DenserBleachOfTheSamePercentByMass_HoldMoreChlorineByVolume(PositiveInt label, PositiveInt density)
    {
        MassFraction share = MassFraction.FromPercent(1 + (label.Get % 15));
        double kilograms = 1_000 + (density.Get % 200);
        return HypochloriteLabel.SodiumHypochlorite(share, Density.FromKilogramsPerCubicMeter(kilograms + 10)).AvailableChlorine
            > HypochloriteLabel.SodiumHypochlorite(share, Density.FromKilogramsPerCubicMeter(kilograms)).AvailableChlorine;
    }

    [Fact]
    public void PowderFor_DryChlorine_WarnsOfFireFirst()
    {
        Estimate<Mass> powder = Hypochlorite.PowderFor(Volume.FromLiters(10), MassFraction.FromPercent(70), MassConcentration.FromMilligramsPerLiter(500));
        Assert.Equal(7.1, powder.Value.Grams, 1);
        Assert.Equal(("bleach.dry-chlorine", CautionLevel.Danger), (powder.Cautions[0].Code, powder.Cautions[0].Level));
    }

    [Property]
    public bool PowderFor_HalfAsStrongAPowder_TakesTwiceAsMuch(PositiveInt share, PositiveInt level)
    {
        MassFraction strong = MassFraction.FromPercent(2 + (share.Get % 90));
        MassConcentration target = MassConcentration.FromMilligramsPerLiter(1 + (level.Get % 8_000));
        return Near.Equal(
            Hypochlorite.PowderFor(Volume.FromLiters(5), MassFraction.FromPercent(strong.Percent / 2), target).Value.Grams,
            2 * Hypochlorite.PowderFor(Volume.FromLiters(5), strong, target).Value.Grams);
    }

    [Theory]
    [InlineData(0, 70, 500, "total")]
    [InlineData(1, 0, 500, "powder")]
    [InlineData(1, -1, 500, "powder")]
    [InlineData(1, 101, 500, "powder")]
    [InlineData(1, 70, 0, "availableChlorine")]
    [InlineData(1, 70, -1, "availableChlorine")]
    public void PowderFor_Impossible_IsRefused(double litres, double percent, double milligramsPerLitre, string parameter) => Assert.Equal(
        parameter,
        Assert.Throws<ArgumentOutOfRangeException>(() => Hypochlorite.PowderFor(
            Volume.FromLiters(litres), MassFraction.FromPercent(percent), MassConcentration.FromMilligramsPerLiter(milligramsPerLitre))).ParamName);

    [Fact]
    public void Label_ByMassWithoutDensity_IsRefused() => Assert.Equal("density", Assert.Throws<ArgumentNullException>(() =>
        new HypochloriteLabel(HypochloriteBasis.SodiumHypochloriteByMass, Ratio.FromPercent(6))).ParamName);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(525)]
    public void Label_PercentOutsideZeroToHundred_IsRefused(double percent) => Assert.Equal(
        "percent", Assert.Throws<ArgumentOutOfRangeException>(() => HypochloriteLabel.Trade(Ratio.FromPercent(percent))).ParamName);

    [Fact]
    public void MakeUpTo_AboveTheBleachItself_IsRefusedWithTheRange()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Hypochlorite.MakeUpTo(
            Volume.FromLiters(1), HypochloriteLabel.Trade(Ratio.FromPercent(10)), MassConcentration.FromGramsPerLiter(101)));
        Assert.Equal("availableChlorine", refused.ParamName);
        Assert.Contains("101000 mg/L", refused.Message, StringComparison.Ordinal);
        Assert.Contains("from 0 to 100000 mg/L", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void SodiumHypochloriteByMass_MoreChlorineThanPureHypochloriteHolds_IsRefused() => Assert.Equal("availableChlorine",
        Assert.Throws<ArgumentOutOfRangeException>(() => Hypochlorite.SodiumHypochloriteByMass(MassFraction.FromPercent(96))).ParamName);

    [Fact]
    public void Label_AsText_SaysBasisAndChlorine() => Assert.Equal(
        "12.5 % trade per cent: 125 g/L of available chlorine", HypochloriteLabel.Trade(Ratio.FromPercent(12.5)).ToString());

    [Theory]
    [InlineData(0)]
    [InlineData(101)]
    [InlineData(double.NaN)]
    public void ChlorometricDegrees_OutsideWhatIsAllowed_IsRefused(double degrees) => Assert.Equal(
        "degrees", Assert.ThrowsAny<ArgumentException>(() => HypochloriteLabel.ChlorometricDegrees(degrees)).ParamName);
}
