using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Beds;
using UnitsNet;
using static HortiCalc.Tests.Beds.Draw;

namespace HortiCalc.Tests.Beds;

/// <summary>What holds for compost doses, their nitrogen, water contents, settling and filled beds.</summary>
public class CompostProperties
{
    [Property]
    public bool ForOrganicMatter_WorkedIn_GivesTheShareWanted(PositiveInt seed)
    {
        Random random = new(seed.Get);
        CompostAnalysis analysis = Analysis(random);
        double own = analysis.OrganicMatter.Percent;
        double current = own * 0.5 * random.NextDouble();
        double wanted = current + (own - current) * 0.9 * random.NextDouble();
        Length depth = Length.FromCentimeters(random.Next(5, 40));
        Density density = Density.FromKilogramsPerCubicMeter(random.Next(800, 1700));
        CompostDose dose = CompostDose.ForOrganicMatter(analysis, depth, density, MassFraction.FromPercent(current), MassFraction.FromPercent(wanted));
        return Near(dose.OrganicMatterAfter(depth, density, MassFraction.FromPercent(current)).Percent, wanted, 1e-8);
    }

    [Property]
    public bool OrganicMatterAfter_AnyDose_LiesBetweenTheSoilAndTheCompost(PositiveInt seed, PositiveInt depth)
    {
        Random random = new(seed.Get);
        CompostAnalysis analysis = Analysis(random);
        double current = analysis.OrganicMatter.Percent * random.NextDouble();
        double after = new CompostDose(analysis, Side(depth)).OrganicMatterAfter(
            Length.FromCentimeters(15), Density.FromKilogramsPerCubicMeter(1300), MassFraction.FromPercent(current)).Percent;
        return after >= current * (1 - 1e-12) && after <= analysis.OrganicMatter.Percent * (1 + 1e-12);
    }

    [Property]
    public bool Dose_OfTwoDepths_BringsTheSumOfBoth(PositiveInt seed, PositiveInt first, PositiveInt second)
    {
        CompostAnalysis analysis = Analysis(new Random(seed.Get));
        CompostDose Dose(Length depth) => new(analysis, depth);
        CompostDose both = Dose(Side(first) + Side(second));
        return Near(both.Nitrogen.GramsPerSquareMeter, Dose(Side(first)).Nitrogen.GramsPerSquareMeter + Dose(Side(second)).Nitrogen.GramsPerSquareMeter)
            && Near(both.Wet.GramsPerSquareMeter * (1 - analysis.Water.DecimalFractions), both.Dry.GramsPerSquareMeter)
            && both.OrganicMatter <= both.Dry;
    }

    [Property]
    public bool ForNitrogenAndForPhosphorus_BringWhatWasAskedFor(PositiveInt seed, PositiveInt amount)
    {
        CompostAnalysis analysis = Analysis(new Random(seed.Get));
        AreaDensity asked = AreaDensity.FromGramsPerSquareMeter(amount.Get % 1000 / 10.0);
        return Near(CompostDose.ForNitrogen(analysis, asked).Nitrogen.GramsPerSquareMeter, asked.GramsPerSquareMeter)
            && Near(CompostDose.ForPhosphorus(analysis, asked).Phosphorus.GramsPerSquareMeter, asked.GramsPerSquareMeter);
    }

    [Property]
    public bool After_Later_IsNeverLessAndInTheEndTheSharePrinted(PositiveInt total, PositiveInt day, PositiveInt more, NonNegativeInt which)
    {
        CompostRelease release = CompostReleases.Published[which.Get % CompostReleases.Published.Count];
        AreaDensity given = AreaDensity.FromGramsPerSquareMeter(1 + total.Get % 100);
        double first = day.Get % 63;
        double second = Math.Min(63, first + more.Get % 20);
        double At(double days) => CompostNitrogen.After(given, Duration.FromDays(days), release).Value.GramsPerSquareMeter;
        return At(first) <= At(second) + 1e-12
            && At(0) == 0
            && Near(At(63), given.GramsPerSquareMeter * release.Share.DecimalFractions);
    }

    // First order means that each equal time releases the same share of what is left.
    [Property]
    public bool After_EqualSteps_ReleaseInAConstantRatio(PositiveInt step, NonNegativeInt which)
    {
        CompostRelease release = CompostReleases.Published[which.Get % CompostReleases.Published.Count];
        double days = 1 + step.Get % 20;
        double At(double time) => CompostNitrogen.After(AreaDensity.FromGramsPerSquareMeter(100), Duration.FromDays(time), release).Value.GramsPerSquareMeter;
        return Near((At(3 * days) - At(2 * days)) / (At(2 * days) - At(days)), Math.Exp(-release.PerDay * days), 1e-6);
    }

    [Property]
    public bool InYear_EachYear_IsHalfTheYearBefore(PositiveInt total, PositiveInt year)
    {
        AreaDensity given = AreaDensity.FromGramsPerSquareMeter(1 + total.Get % 100);
        int which = 1 + year.Get % 20;
        return Near(CompostNitrogen.InYear(given, which).Value.GramsPerSquareMeter, 2 * CompostNitrogen.InYear(given, which + 1).Value.GramsPerSquareMeter)
            && Near(CompostNitrogen.InYear(given, 1).Value.GramsPerSquareMeter, given.GramsPerSquareMeter / 8);
    }

    [Property]
    public bool PlantAvailable_AnyShares_IsNeverMoreThanThereIs(PositiveInt organic, PositiveInt ammonium, PositiveInt nitrate, NonNegativeInt mineralised, NonNegativeInt kept)
    {
        MassFraction Share(PositiveInt drawn) => MassFraction.FromPercent(drawn.Get % 300 / 100.0);
        double available = CompostNitrogen.PlantAvailable(
            Share(organic), Share(ammonium), Share(nitrate), Ratio.FromPercent(mineralised.Get % 101), Ratio.FromPercent(kept.Get % 101)).Percent;
        return available <= Share(organic).Percent + Share(ammonium).Percent + Share(nitrate).Percent + 1e-12 && available >= Share(nitrate).Percent - 1e-12;
    }

    [Property]
    public bool DryDensity_OfTheWetDensity_IsTheDryOneOnEitherBasis(PositiveInt density, NonNegativeInt water)
    {
        Density dry = Density.FromKilogramsPerCubicMeter(50 + density.Get % 1700);
        Ratio share = Ratio.FromPercent(water.Get % 100);
        return Enum.GetValues<MoistureBasis>().All(basis =>
            Near(WaterContent.DryDensity(WaterContent.WetDensity(dry, share, basis), share, basis).KilogramsPerCubicMeter, dry.KilogramsPerCubicMeter)
            && Near(WaterContent.DryMass(WaterContent.WetMass(Mass.FromKilograms(3), share, basis), share, basis).Kilograms, 3));
    }

    [Property]
    public bool FromMasses_OnBothBases_AreOneWater(PositiveInt dry, NonNegativeInt water)
    {
        Mass dryMass = Mass.FromGrams(1 + dry.Get % 1000);
        Mass wetMass = dryMass + Mass.FromGrams(water.Get % 2000);
        double ofDry = WaterContent.FromMasses(wetMass, dryMass, MoistureBasis.OfDryMass).DecimalFractions;
        double ofWet = WaterContent.FromMasses(wetMass, dryMass, MoistureBasis.OfWetMass).DecimalFractions;
        return Near(ofWet, ofDry / (1 + ofDry)) && ofWet < 1;
    }

    [Property]
    public bool AllowanceFor_TheLossThatAnAllowanceCovers_IsThatAllowance(NonNegativeInt allowance)
    {
        Ratio onTop = Ratio.FromPercent(allowance.Get % 300 / 2.0);
        return Near(Settling.AllowanceFor(Settling.LossCoveredBy(onTop)).Percent, onTop.Percent)
            && Settling.LossCoveredBy(onTop).Percent <= onTop.Percent;
    }

    [Property]
    public bool DepthAfter_OfTheLooseDepth_IsTheSettledOne(PositiveInt depth, NonNegativeInt loss, NonNegativeInt years)
    {
        Ratio lost = Ratio.FromPercent(loss.Get % 95);
        int count = years.Get % 10;
        return Near(Settling.DepthAfter(Settling.LooseFor(Side(depth), lost), lost).Meters, Side(depth).Meters)
            && Near(Settling.TopUp(Side(depth), lost, count).Meters + Settling.DepthAfter(Side(depth), lost, count).Meters, Side(depth).Meters)
            && Near(
                Settling.DepthAfter(Side(depth), lost, count + 1).Meters, Settling.DepthAfter(Settling.DepthAfter(Side(depth), lost, count), lost).Meters);
    }

    [Property]
    public bool LayeredBed_Layers_AddUpToItsHeightAndVolume(PositiveInt a, PositiveInt b, PositiveInt first, PositiveInt second, PositiveInt existing)
    {
        Bed ground = Bed.Ellipse(Side(a), Side(b));
        LayeredBed bed = new(
            ground,
            Length.FromMeters(1),
            Side(existing),
            [
                new BedLayer("soil", BulkMaterial.Soil, AmendmentLayer.LooseOnTop(Side(first), Ratio.Zero)),
                new BedLayer("compost", BulkMaterial.Compost, AmendmentLayer.LooseOnTop(Side(second), Ratio.Zero)),
            ],
            BedEdging.Timber);
        return Near(bed.ToBuy.Sum(volume => volume.Liters), ground.FillVolume(Side(first) + Side(second)).Liters)
            && Near(bed.Height.Meters, Side(existing).Meters + Side(first).Meters + Side(second).Meters)
            && Near(bed.Height.Meters + bed.BelowRim.Meters - bed.AboveRim.Meters, 1);
    }

    [Property]
    public bool WithWater_AddedToADryDensity_WeighsAsMuchMoreAsTheWater(PositiveInt volume, PositiveInt water)
    {
        BulkDensity dry = BulkDensities.Named("soil-density-by-texture", "loam");
        Ratio share = Ratio.FromPercent(1 + water.Get % 60);
        BulkDensity wet = dry.WithWater(share, MoistureBasis.OfDryMass, MoistureState.Moist);
        return Near(
            wet.MassOf(Amount(volume)).Value.Kilograms, dry.MassOf(Amount(volume)).Value.Kilograms * (1 + share.DecimalFractions))
            && wet.Moisture == MoistureState.Moist;
    }

    [Property]
    public bool LoadOf_ADepth_IsTheMassOfThatVolumeOverItsArea(PositiveInt a, PositiveInt b, PositiveInt depth, NonNegativeInt which)
    {
        BulkDensity density = BulkDensities.Published[which.Get % BulkDensities.Published.Count];
        Bed bed = Bed.Rectangle(Side(a), Side(b));
        return Near(
            density.LoadOf(Side(depth)).Value.KilogramsPerSquareMeter * bed.Area.SquareMeters, density.MassOf(bed.FillVolume(Side(depth))).Value.Kilograms);
    }

    private static CompostAnalysis Analysis(Random random) => new(
        Density.FromKilogramsPerCubicMeter(random.Next(350, 900)),
        Ratio.FromPercent(random.Next(0, 70)),
        MassFraction.FromPercent(random.Next(20, 80)),
        MassFraction.FromPercent(random.Next(5, 40) / 10.0),
        MassFraction.FromPercent(random.Next(2, 30) / 10.0),
        ElectricConductivity.FromMillisiemensPerCentimeter(random.Next(0, 12)));
}
