using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>The laws of soil water.</summary>
public class SoilWaterProperties
{
    // Sand to 80 %, clay from 5 to 45 %, organic matter from 1 to 5 %: the regressions have their order everywhere in it at the normal density.
    private static SoilHydraulics Hydraulics(PositiveInt sand, PositiveInt clay, PositiveInt matter, double? gravel = null, double? salinity = null)
    {
        double clayPercent = Between(clay, 5, 45);
        return new SoilHydraulics(SoilComposition.FromParticles(
            ParticleSizes.FromSandAndClay(MassFraction.FromPercent(Between(sand, 5, Math.Min(80, 95 - clayPercent))), MassFraction.FromPercent(clayPercent)),
            MassFraction.FromPercent(Between(matter, 1, 5)),
            gravel is { } stones ? MassFraction.FromPercent(stones) : null,
            null,
            salinity is { } salts ? ElectricConductivity.FromMillisiemensPerCentimeter(salts) : null));
    }

    private static bool Near(double one, double two, double relative = 1e-9) => Math.Abs(one - two) <= relative * Math.Max(Math.Abs(one), Math.Abs(two)) + 1e-300;

    [Property]
    public bool SaxtonRawls_AnySoil_WiltsDrainsAndFillsInThatOrder(PositiveInt sand, PositiveInt clay, PositiveInt matter)
    {
        SoilHydraulics water = Hydraulics(sand, clay, matter);
        return water.WiltingPoint.Percent > 0 && water.WiltingPoint < water.FieldCapacity && water.FieldCapacity < water.Saturation && water.Saturation.Percent < 100
            && Near(water.AvailableWater.Value.Percent, water.FieldCapacity.Percent - water.WiltingPoint.Percent)
            && Near(water.BulkDensity.GramsPerCubicCentimeter, (1 - water.Saturation.DecimalFractions) * 2.65);
    }

    [Property]
    public bool SaxtonRawls_Curve_PassesThroughItsOwnPoints(PositiveInt sand, PositiveInt clay, PositiveInt matter)
    {
        SoilHydraulics water = Hydraulics(sand, clay, matter);
        return Near(water.TensionAt(water.FieldCapacity).Kilopascals, 33) && Near(water.TensionAt(water.WiltingPoint).Kilopascals, 1500)
            && Near(water.WaterAt(Pressure.FromKilopascals(33)).Percent, water.FieldCapacity.Percent)
            && (water.AirEntry is not { } entry || Near(water.TensionAt(water.Saturation).Kilopascals, entry.Kilopascals, 1e-6) || entry.Kilopascals < 1e-6)
            && Near(water.ConductivityAt(water.Saturation).MillimetresPerHour, water.SaturatedConductivity.MillimetresPerHour);
    }

    [Property]
    public bool SaxtonRawls_TensionAndWater_AreInverses(PositiveInt sand, PositiveInt clay, PositiveInt matter, PositiveInt at)
    {
        SoilHydraulics water = Hydraulics(sand, clay, matter);
        double tension = Math.Exp(Between(at, Math.Log(33.001), Math.Log(1499.9)));
        return Near(water.TensionAt(water.WaterAt(Pressure.FromKilopascals(tension))).Kilopascals, tension, 1e-8);
    }

    [Property]
    public bool SaxtonRawls_WetterSoil_HoldsLessFirmlyAndConductsMore(PositiveInt sand, PositiveInt clay, PositiveInt matter, PositiveInt first, PositiveInt second)
    {
        SoilHydraulics water = Hydraulics(sand, clay, matter);
        double Share(PositiveInt seed) => Between(seed, water.WiltingPoint.Percent, (water.AirEntry is null ? water.FieldCapacity : water.Saturation).Percent);
        VolumeConcentration dry = VolumeConcentration.FromPercent(Math.Min(Share(first), Share(second)));
        VolumeConcentration wet = VolumeConcentration.FromPercent(Math.Max(Share(first), Share(second)));
        return water.TensionAt(dry).Kilopascals >= water.TensionAt(wet).Kilopascals * (1 - 1e-12) - 1e-9 && water.ConductivityAt(dry) <= water.ConductivityAt(wet);
    }

    [Property]
    public bool SaxtonRawls_MoreGravel_HoldsAndConductsLessAndWeighsMore(PositiveInt sand, PositiveInt clay, PositiveInt matter, PositiveInt gravel)
    {
        double stones = Between(gravel, 0, 80);
        SoilHydraulics few = Hydraulics(sand, clay, matter, stones);
        SoilHydraulics many = Hydraulics(sand, clay, matter, stones + 10);
        return many.AvailableWaterWithGravel.Value < few.AvailableWaterWithGravel.Value
            && many.SaturatedConductivityWithGravel < few.SaturatedConductivityWithGravel
            && many.BulkDensityWithGravel > few.BulkDensityWithGravel
            && Hydraulics(sand, clay, matter, 0).SaturatedConductivityWithGravel == few.SaturatedConductivity
            // By mass from the volumes, as it was given.
            && Math.Abs(few.GravelVolume.DecimalFractions * 2650 / few.BulkDensityWithGravel.KilogramsPerCubicMeter * 100 - stones) < 1e-9;
    }

    [Property]
    public bool SaxtonRawls_MoreSalts_LeaveLessWater_AndBothPullsMake1500(PositiveInt sand, PositiveInt clay, PositiveInt matter, PositiveInt salts)
    {
        double salinity = Between(salts, 0.1, 12);
        SoilHydraulics salty = Hydraulics(sand, clay, matter, salinity: salinity);
        double left = salty.AvailableWaterWithSalts.Value.Percent;
        if (left == 0)
            return salty.AvailableWaterWithSalts.Cautions.Any(caution => caution.Code == "soil-water.nothing-available");
        VolumeConcentration last = VolumeConcentration.FromPercent(salty.FieldCapacity.Percent - left);
        return left < salty.AvailableWater.Value.Percent
            && left >= Hydraulics(sand, clay, matter, salinity: salinity + 1).AvailableWaterWithSalts.Value.Percent
            && Math.Abs(salty.TensionAt(last).Kilopascals + salty.OsmoticTensionAt(last).Value.Kilopascals - 1500) < 1e-4;
    }

    [Property]
    public bool SaxtonRawls_CompactedSoil_HasFewerPoresAndIsDenserInProportion(PositiveInt sand, PositiveInt factor)
    {
        double share = Between(factor, 0.9, 1.05);
        SoilComposition Soil(double compaction) => SoilComposition.FromParticles(
            ParticleSizes.FromSandAndClay(MassFraction.FromPercent(Between(sand, 20, 70)), MassFraction.FromPercent(15)),
            MassFraction.FromPercent(2), null, Ratio.FromPercent(compaction * 100));
        SoilHydraulics loose = new(Soil(share));
        SoilHydraulics dense = new(Soil(share + 0.01));
        SoilHydraulics normal = new(Soil(1));
        return dense.Saturation < loose.Saturation && dense.SaturatedConductivity < loose.SaturatedConductivity
            && Near(loose.BulkDensity.KilogramsPerCubicMeter, normal.BulkDensity.KilogramsPerCubicMeter * share);
    }

    [Property]
    public bool AvailableWater_AnyTextureAndMethod_LiesInItsRangeAndTheSpread(PositiveInt texture, PositiveInt grade)
    {
        AvailableWaterComparison sides = AvailableWater.Compare(new SoilComposition(Texture(texture), sandGrade: (SandGrade)(grade.Get % 4)));
        return sides.Answers.Count >= 2 && sides.Answers.Count + sides.Refusals.Count == AvailableWaterMethod.All.Count && sides.WhyTheyDiffer.Count > 0
            && sides.Answers.All(answer =>
                (answer.Available.Range is not { } range || (range.Low <= answer.Available.Value && answer.Available.Value <= range.High))
                && sides.Spread!.Low <= answer.Available.Value && answer.Available.Value <= sides.Spread.High);
    }

    [Property]
    public bool Profile_OneSoilInSlices_HoldsWhatTheWholeHolds(PositiveInt water, PositiveInt slices, PositiveInt depth)
    {
        VolumeConcentration share = VolumeConcentration.FromPercent(Between(water, 1, 30));
        int count = slices.Get % 9 + 1;
        Length metre = Length.FromMeters(1);
        SoilProfile cut = new([.. Enumerable.Repeat(new SoilHorizon(metre / count, share), count)]);
        Length roots = Length.FromCentimeters(Between(depth, 0, 100));
        return Near(cut.AvailableWater(roots).Meters, new SoilProfile([new SoilHorizon(metre, share)]).AvailableWater(roots).Meters, 1e-12)
            && Near(cut.AvailableWater(roots).Meters, roots.Meters * share.DecimalFractions, 1e-12);
    }

    [Property]
    public bool Profile_DeeperRoots_ReachMoreWater_InAnyUnit(PositiveInt top, PositiveInt below, PositiveInt depth)
    {
        SoilProfile profile = new(
        [
            new SoilHorizon(Length.FromInches(12), VolumeConcentration.FromPercent(Between(top, 1, 25))),
            new SoilHorizon(Length.FromCentimeters(100), VolumeConcentration.FromPercent(Between(below, 1, 25))),
        ]);
        double centimetres = Between(depth, 0, 120);
        double water = profile.AvailableWater(Length.FromCentimeters(centimetres)).Millimeters;
        return profile.AvailableWater(Length.FromCentimeters(centimetres + 1)).Millimeters > water
            && Math.Abs(profile.AvailableWater(Length.FromInches(centimetres / 2.54)).Millimeters - water) < 1e-9;
    }

    [Property]
    public bool Profile_RefillAndRemaining_MakeAllTheWater(PositiveInt share, PositiveInt depth)
    {
        SoilProfile profile = new(
        [
            SoilHorizon.Between(Length.FromCentimeters(30), VolumeConcentration.FromPercent(30), VolumeConcentration.FromPercent(14)),
            SoilHorizon.Between(Length.FromCentimeters(60), VolumeConcentration.FromPercent(25), VolumeConcentration.FromPercent(12)),
        ]);
        Length roots = Length.FromCentimeters(Between(depth, 5, 90));
        double left = Between(share, 0, 100);
        Length refill = profile.Refill(roots, Ratio.FromPercent(left));
        double gone = (100 - left) / 100;
        VolumeConcentration[] measured = [VolumeConcentration.FromPercent(30 - 16 * gone), VolumeConcentration.FromPercent(25 - 13 * gone)];
        return Math.Abs(refill.Millimeters + profile.ReadilyAvailableWater(roots, Ratio.FromPercent(left)).Millimeters - profile.AvailableWater(roots).Millimeters) < 1e-9
            && Math.Abs(profile.RefillTo(roots, measured).Millimeters - refill.Millimeters) < 1e-9;
    }

    [Property]
    public bool DepletionShare_MoreUse_IsLess_AndAtFiveMillimetresTheTable(PositiveInt share, PositiveInt use)
    {
        double percent = Between(share, 10, 80);
        double millimetres = Between(use, 0, 12);
        double At(double rate) => RootZones.DepletionShare(Ratio.FromPercent(percent), WaterRate.FromMillimetresPerDay(rate)).Value.Percent;
        return At(millimetres) is >= 10 - 1e-9 and <= 80 + 1e-9 && At(millimetres) >= At(millimetres + 0.5) - 1e-9 && Math.Abs(At(5) - percent) < 1e-9;
    }

    [Property]
    public bool Porosity_AndBulkDensity_AreInverses(PositiveInt porosity, PositiveInt particle)
    {
        VolumeConcentration pores = VolumeConcentration.FromPercent(Between(porosity, 1, 95));
        Density grains = Density.FromGramsPerCubicCentimeter(Between(particle, 1.2, 3));
        return Math.Abs(SoilDensity.Porosity(SoilDensity.FromPorosity(pores, grains), grains).Percent - pores.Percent) < 1e-9;
    }

    [Property]
    public bool Moisture_AndDryMass_AreInverses(PositiveInt moisture, PositiveInt mass)
    {
        Mass wet = Mass.FromPounds(Between(mass, 0.1, 10));
        Ratio water = Ratio.FromPercent(Between(moisture, 0, 200));
        return Math.Abs(SoilDensity.Moisture(wet, SoilDensity.DryMass(wet, water)).Percent - water.Percent) < 1e-9;
    }

    [Property]
    public bool VanGenuchten_SuctionAndWater_AreInverses(PositiveInt which, PositiveInt suction)
    {
        VanGenuchtenCurve curve = Curve(which);
        // From one tenth to a thousand times the suction of air entry; nearer to saturation the water says nothing of the suction.
        double metres = Math.Exp(Between(suction, Math.Log(0.1), Math.Log(1000))) / curve.Alpha.InverseMeters;
        return Near(curve.SuctionAt(curve.WaterAt(Length.FromMeters(metres))).Meters, metres, 1e-6);
    }

    [Property]
    public bool VanGenuchten_MoreSuction_LeavesLessWaterThatConductsLess(PositiveInt which, PositiveInt first, PositiveInt second)
    {
        VanGenuchtenCurve curve = VanGenuchtenSoils.All[which.Get % 12].Curve;
        double At(PositiveInt seed) => Math.Exp(Between(seed, Math.Log(0.001), Math.Log(150)));
        VolumeConcentration wet = curve.WaterAt(Length.FromMeters(Math.Min(At(first), At(second))));
        VolumeConcentration dry = curve.WaterAt(Length.FromMeters(Math.Max(At(first), At(second))));
        return dry <= wet && wet <= curve.Saturated && dry >= curve.Residual && curve.ConductivityAt(dry) <= curve.ConductivityAt(wet);
    }

    [Property]
    public bool VanGenuchten_Capacity_IsTheSlopeOfTheCurve(PositiveInt which, PositiveInt suction)
    {
        VanGenuchtenCurve curve = Curve(which);
        double metres = Math.Exp(Between(suction, Math.Log(0.1), Math.Log(100))) / curve.Alpha.InverseMeters;
        double step = metres * 1e-4;
        double slope = (curve.WaterAt(Length.FromMeters(metres - step)).DecimalFractions - curve.WaterAt(Length.FromMeters(metres + step)).DecimalFractions) / (2 * step);
        // The second order of the difference, and the last digits of the water over the step.
        return Math.Abs(curve.CapacityAt(Length.FromMeters(metres)).InverseMeters - slope) < 1e-6 * slope + 1e-15 / step;
    }

    [Property]
    public bool VanGenuchten_AtTheLimits_IsFullWithoutSuctionAndAPowerLawFarOut(PositiveInt which)
    {
        VanGenuchtenCurve curve = Curve(which);
        double far = 1e6 / curve.Alpha.InverseMeters;
        double Filled(double metres) => (curve.WaterAt(Length.FromMeters(metres)).DecimalFractions - curve.Residual.DecimalFractions)
            / (curve.Saturated.DecimalFractions - curve.Residual.DecimalFractions);
        return Math.Abs(curve.WaterAt(Length.Zero).Percent - curve.Saturated.Percent) < 1e-12
            && (curve.SaturatedConductivity is not { } full || Near(curve.ConductivityAt(curve.Saturated).MillimetresPerHour, full.MillimetresPerHour))
            && Math.Abs(Filled(far) / Math.Pow(1e6, 1 - curve.N) - 1) < 1e-4 + 1e-15 / Math.Pow(1e6, 1 - curve.N);
    }

    [Property]
    public bool GreenAmpt_CumulativeAndTime_AreInverses(PositiveInt which, PositiveInt moist, PositiveInt time)
    {
        GreenAmpt soil = Model(which, moist);
        double hours = Math.Exp(Between(time, Math.Log(1e-6), Math.Log(1e4)));
        return Near(soil.TimeFor(soil.CumulativeAfter(Duration.FromHours(hours))).Hours, hours, 1e-9);
    }

    [Property]
    public bool GreenAmpt_Rate_IsTheSlopeOfTheCumulative_AndFallsToTheConductivity(PositiveInt which, PositiveInt moist, PositiveInt time)
    {
        GreenAmpt soil = Model(which, moist);
        double hours = Math.Exp(Between(time, Math.Log(0.01), Math.Log(100)));
        double At(double when) => soil.CumulativeAfter(Duration.FromHours(when)).Millimeters;
        double step = hours * 1e-4;
        double rate = soil.RateAt(soil.CumulativeAfter(Duration.FromHours(hours))).MillimetresPerHour;
        return Near((At(hours + step) - At(hours - step)) / (2 * step), rate, 1e-6)
            && rate >= soil.Conductivity.MillimetresPerHour
            && soil.RateAt(Length.FromKilometers(1e6)).MillimetresPerHour < soil.Conductivity.MillimetresPerHour * 1.000001;
    }

    [Property]
    public bool GreenAmpt_TheSameScaledTime_BringsTheSameScaledDepth(PositiveInt which, PositiveInt moist, PositiveInt time, PositiveInt factor)
    {
        GreenAmpt soil = Model(which, moist);
        double more = Between(factor, 0.1, 10);
        GreenAmpt stronger = new(soil.Conductivity, soil.Suction * more, soil.Deficit);
        double hours = Between(time, 0.01, 20);
        return Near(
            stronger.CumulativeAfter(Duration.FromHours(hours * more)).Millimeters, soil.CumulativeAfter(Duration.FromHours(hours)).Millimeters * more, 1e-9);
    }

    [Property]
    public bool GreenAmpt_UnderRain_TakesAllUntilPondingAndNeverMoreThanUnderAFilm(PositiveInt which, PositiveInt moist, PositiveInt rain, PositiveInt time)
    {
        GreenAmpt soil = Model(which, moist);
        WaterRate sprinkler = WaterRate.FromMillimetresPerHour(soil.Conductivity.MillimetresPerHour * Between(rain, 0.1, 8));
        Duration after = Duration.FromHours(Between(time, 0.01, 50));
        double into = soil.InfiltratedUnder(sprinkler, after).Millimeters;
        bool pools = soil.PondingTime(sprinkler) is { } ponding && ponding < after;
        return into <= sprinkler.Over(after).Millimeters * (1 + 1e-9) && into <= soil.CumulativeAfter(after).Millimeters * (1 + 1e-9)
            && (pools || Near(into, sprinkler.Over(after).Millimeters, 1e-9))
            && soil.PondingTime(sprinkler) is null == (sprinkler <= soil.Conductivity);
    }

    [Property]
    public bool GreenAmpt_AtPonding_TheSoilTakesJustWhatFalls(PositiveInt which, PositiveInt moist, PositiveInt rain)
    {
        GreenAmpt soil = Model(which, moist);
        WaterRate sprinkler = WaterRate.FromMillimetresPerHour(soil.Conductivity.MillimetresPerHour * Between(rain, 1.01, 20));
        Length fallen = sprinkler.Over(soil.PondingTime(sprinkler)!.Value);
        return Near(soil.RateAt(fallen).MillimetresPerHour, sprinkler.MillimetresPerHour, 1e-9);
    }

    [Property]
    public bool GreenAmpt_AfterPonding_TheSoilTakesWhatItCanForWhatWentIn(PositiveInt which, PositiveInt moist, PositiveInt rain, PositiveInt time)
    {
        GreenAmpt soil = Model(which, moist);
        WaterRate sprinkler = WaterRate.FromMillimetresPerHour(soil.Conductivity.MillimetresPerHour * Between(rain, 1.1, 10));
        double ponding = soil.PondingTime(sprinkler)!.Value.Hours;
        double hours = ponding * Between(time, 1.01, 20);
        double Into(double when) => soil.InfiltratedUnder(sprinkler, Duration.FromHours(when)).Millimeters;
        double step = hours * 1e-4;
        return Near((Into(hours + step) - Into(hours - step)) / (2 * step), soil.RateAt(Length.FromMillimeters(Into(hours))).MillimetresPerHour, 1e-5)
            // No water is lost at the moment of ponding.
            && Near(Into(ponding * (1 + 1e-6)), sprinkler.MillimetresPerHour * ponding, 1e-5);
    }

    private static VanGenuchtenCurve Curve(PositiveInt which) => VanGenuchtenSoils.All[which.Get % VanGenuchtenSoils.All.Count].Curve;

    private static GreenAmpt Model(PositiveInt which, PositiveInt moist) =>
        GreenAmptSoils.All[which.Get % GreenAmptSoils.All.Count].From(Ratio.FromPercent(Between(moist, 0, 95)));
}
