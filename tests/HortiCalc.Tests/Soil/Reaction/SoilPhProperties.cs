using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>Laws of the arithmetic of pH.</summary>
public class SoilPhProperties
{
    [Property]
    public bool Mean_EqualReadings_IsThatPhWithoutSpread(PositiveInt seed, PositiveInt count)
    {
        Ph ph = new(Between(seed, 2, 12));
        Ph[] readings = [.. Enumerable.Repeat(ph, 1 + count.Get % 9)];
        return PhMeanMethod.All.All(method => Math.Abs(SoilPh.Mean(readings, method).Value - ph) < 1e-9);
    }

    [Property]
    public bool Mean_Solutions_IsNeverAboveThePlainMean(PositiveInt first, PositiveInt second, PositiveInt third)
    {
        Ph[] readings = Readings(first, second, third);
        return SoilPh.Mean(readings, PhMeanMethod.Solutions).Value.Value <= SoilPh.Mean(readings, PhMeanMethod.SoilSamples).Value.Value + 1e-12;
    }

    [Property]
    public bool Mean_EitherWay_LiesBetweenTheReadingsAndInItsRange(PositiveInt first, PositiveInt second, PositiveInt third)
    {
        Ph[] readings = Readings(first, second, third);
        return PhMeanMethod.All.Select(method => SoilPh.Mean(readings, method)).All(mean =>
            mean.Value >= readings.Min() && mean.Value <= readings.Max()
            && (mean.Range is null || (mean.Range.Low.Value <= mean.Value.Value + 1e-9 && mean.Range.High.Value >= mean.Value.Value - 1e-9)));
    }

    [Property]
    public bool Mean_AnyOrder_IsTheSame(PositiveInt first, PositiveInt second, PositiveInt third)
    {
        Ph[] readings = Readings(first, second, third);
        return PhMeanMethod.All.All(method => Math.Abs(
            SoilPh.Mean(readings, method).Value - SoilPh.Mean([readings[2], readings[0], readings[1]], method).Value) < 1e-12);
    }

    [Property]
    public bool Convert_ThereAndBack_GivesTheReadingAgain(PositiveInt which, PositiveInt seed)
    {
        PhConversion conversion = PhConversion.All[which.Get % PhConversion.All.Count];
        Ph reading = new(Between(seed, 4, 9));
        Ph converted = conversion.Convert(reading).Value;
        return Math.Abs(conversion.ConvertBack(converted).Value - reading) < 1e-9;
    }

    [Property]
    public bool Convert_HigherReading_GivesAHigherOne(PositiveInt which, PositiveInt first, PositiveInt second)
    {
        PhConversion conversion = PhConversion.All[which.Get % PhConversion.All.Count];
        double low = Math.Min(Between(first, 3, 10), Between(second, 3, 10));
        double high = Math.Max(Between(first, 3, 10), Between(second, 3, 10));
        return conversion.Convert(new Ph(low)).Value <= conversion.Convert(new Ph(high)).Value;
    }

    [Property]
    public bool Convert_WaterToCalciumChloride_IsLower(PositiveInt seed)
    {
        Ph water = new(Between(seed, 3, 10));
        return PhConversion.Between(PhSolution.Water, PhSolution.CalciumChloride).All(conversion => conversion.Convert(water).Value < water);
    }

    [Property]
    public bool OfBlend_EqualVolumes_OfAcids_IsTheMeanOfActivities(PositiveInt first, PositiveInt second)
    {
        Ph one = new(Between(first, 1, 5));
        Ph two = new(Between(second, 1, 5));
        Volume litre = Volume.FromLiters(1);
        return Math.Abs(SoilPh.OfBlend([new SolutionPart(litre, one), new SolutionPart(litre, two)]).Value - Ph.MeanOfSolutions(one, two)) < 1e-4;
    }

    [Property]
    public bool OfBlend_AcidAndItsMirror_IsNeutral(PositiveInt seed, PositiveInt volume)
    {
        double ph = Between(seed, 2, 7);
        Volume each = Volume.FromLiters(Between(volume, 0.1, 100));
        return Math.Abs(SoilPh.OfBlend([new SolutionPart(each, new Ph(ph)), new SolutionPart(each, new Ph(14 - ph))]).Value.Value - 7) < 1e-3;
    }

    [Property]
    public bool OfBlend_MirroredParts_GiveTheMirroredPh(PositiveInt first, PositiveInt second, PositiveInt volume)
    {
        Volume one = Volume.FromLiters(Between(volume, 0.5, 10));
        Volume two = Volume.FromUsGallons(1);
        double a = Between(first, 3, 11);
        double b = Between(second, 3, 6);
        double straight = SoilPh.OfBlend([new SolutionPart(one, new Ph(a)), new SolutionPart(two, new Ph(b))]).Value.Value;
        double mirrored = SoilPh.OfBlend([new SolutionPart(one, new Ph(14 - a)), new SolutionPart(two, new Ph(14 - b))]).Value.Value;
        return Math.Abs(straight + mirrored - 14) < 1e-3;
    }

    [Property]
    public bool OfLayers_SplitLayer_ReadsTheSameInAnyUnit(PositiveInt first, PositiveInt second, PositiveInt thickness)
    {
        double centimetres = Between(thickness, 2, 30);
        PhLayer below = new(Length.FromInches(4), new Ph(Between(second, 4, 8)));
        Ph top = new(Between(first, 4, 8));
        double whole = SoilPh.OfLayers([new PhLayer(Length.FromCentimeters(centimetres), top), below]).Value.Value;
        PhLayer half = new(Length.FromInches(centimetres / 2.54 / 2), top);
        return Near(SoilPh.OfLayers([half, half, below]).Value.Value, whole);
    }

    [Property]
    public bool OfMix_StrongerBuffer_PullsTheMixToItsPh(PositiveInt first, PositiveInt second, PositiveInt capacity)
    {
        Ph one = new(Between(first, 4.5, 6.5));
        Ph two = new(Between(second, 4.5, 6.5));
        double mgPerKg = Between(capacity, 100, 1000);
        double Distance(double factor) => Math.Abs(SoilPh.OfMix([Part(1, one, mgPerKg * factor), Part(1, two, mgPerKg)]).Value - one);
        return Distance(2) <= Distance(1) + 1e-12 && Math.Abs(Distance(1) - Math.Abs(one - two) / 2) < 1e-9;
    }

    [Property]
    public bool OfMix_EqualPh_IsThatPhWhateverTheBuffer(PositiveInt seed, PositiveInt mass)
    {
        Ph ph = new(Between(seed, 3, 9));
        return SoilPh.OfMix([new MediumPart(Mass.FromKilograms(Between(mass, 1, 50)), ph), new MediumPart(Mass.FromPounds(3), ph)]).Value == ph;
    }

    [Property]
    public bool CropPh_RowsWithoutDoubt_AreInOrder(PositiveInt seed)
    {
        CropPh row = CropPhs.All[seed.Get % CropPhs.All.Count];
        double[] limits = [.. new[] { row.Minimum, row.OptimumLow, row.OptimumHigh, row.Maximum }.OfType<Ph>().Select(ph => ph.Value)];
        return row.Doubt is not null || limits.SequenceEqual(limits.Order());
    }

    [Property]
    public bool CropPh_AnyRow_IsFoundByItsOwnName(PositiveInt seed)
    {
        CropPh row = CropPhs.All[seed.Get % CropPhs.All.Count];
        return CropPhs.Compare(row.Crop).Rows.Contains(row);
    }

    private static MediumPart Part(double kilograms, Ph ph, double mgPerKg) =>
        new(Mass.FromKilograms(kilograms), ph, MassFraction.FromMilligramsPerKilogram(mgPerKg));

    private static Ph[] Readings(PositiveInt first, PositiveInt second, PositiveInt third) =>
        [new(Between(first, 3, 9)), new(Between(second, 3, 9)), new(Between(third, 3, 9))];
}
