using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Mixes;
using UnitsNet;

namespace HortiCalc.Tests.Mixes;

/// <summary>Laws of practical measures: within the limit that was set, or refused.</summary>
public class MeasuringProperties
{
    private static readonly IReadOnlyList<KitchenMeasure>[] Kitchens =
        [KitchenMeasures.Us, KitchenMeasures.Metric, KitchenMeasures.Imperial, KitchenMeasures.Australian, KitchenMeasures.Graduated];

    private static PracticalAmount? Try(Volume amount, IReadOnlyList<KitchenMeasure> measures, double percent)
    {
        try
        {
            return Measuring.Nearest(amount, measures, Ratio.FromPercent(percent));
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    private static Volume Millilitres(PositiveInt value) => Volume.FromMilliliters(0.2 + (value.Get % 100_000 / 11.0));

    [Property]
    public bool Nearest_AnyAmount_IsWithinItsLimitOrRefused(PositiveInt amount, byte kitchen, byte limit)
    {
        double percent = 1 + (limit % 30);
        PracticalAmount? measured = Try(Millilitres(amount), Kitchens[kitchen % Kitchens.Length], percent);
        return measured is null || Math.Abs(measured.Error.Percent) <= percent + 1e-9;
    }

    [Property]
    public bool Nearest_AnyAmount_StatesTheErrorOfWhatItMeasures(PositiveInt amount, byte kitchen)
    {
        PracticalAmount? measured = Try(Millilitres(amount), Kitchens[kitchen % Kitchens.Length], 25);
        return measured is null || Near.Equal(measured.Measured.Liters, Millilitres(amount).Liters * (1 + (measured.Error.Percent / 100)));
    }

    [Property]
    public bool Nearest_AWiderLimit_NeverRefusesWhatANarrowOneTakes(PositiveInt amount, byte kitchen, byte limit)
    {
        double percent = 1 + (limit % 30);
        return Try(Millilitres(amount), Kitchens[kitchen % Kitchens.Length], percent) is null
            || Try(Millilitres(amount), Kitchens[kitchen % Kitchens.Length], percent * 1.5) is not null;
    }

    [Property]
    public bool Nearest_WholeMeasures_AreExact(byte kitchen, byte which, byte count)
    {
        IReadOnlyList<KitchenMeasure> measures = Kitchens[kitchen % Kitchens.Length];
        KitchenMeasure measure = measures[which % measures.Count];
        MeasureCount wanted = new(measure, 1 + (count % (measure.Most * measure.Parts)));
        return Math.Abs(Measuring.Nearest(wanted.Volume, measures, Ratio.FromPercent(1e-7)).Error.Percent) < 1e-6;
    }

    [Property]
    public bool Nearest_OfAPowder_IsThatOfItsVolume(PositiveInt amount, PositiveInt density)
    {
        double gramsPerLitre = 200 + (density.Get % 1500);
        Mass mass = Mass.FromGrams(Millilitres(amount).Milliliters * gramsPerLitre / 1000);
        try
        {
            PracticalAmount spoon = Measuring.Nearest(mass, Density.FromKilogramsPerCubicMeter(gramsPerLitre), KitchenMeasures.Us, Ratio.FromPercent(20));
            Mass held = Measuring.LevelMeasure(spoon.Measured, Density.FromKilogramsPerCubicMeter(gramsPerLitre));
            return Math.Abs((held / mass) - 1) <= 0.2 + 1e-9;
        }
        catch (ArgumentOutOfRangeException)
        {
            return Try(Millilitres(amount), KitchenMeasures.Us, 19.9999) is null;
        }
    }

    [Property]
    public bool OnScale_AnyMass_IsAWholeNumberOfStepsWithinHalfAStep(PositiveInt amount, byte step)
    {
        double division = new[] { 0.1, 0.5, 1, 5 }[step % 4];
        double grams = 5.1 + (amount.Get % 10_000 / 7.0);
        double shown = Measuring.OnScale(Mass.FromGrams(grams), Mass.FromGrams(division), Ratio.FromPercent(60)).Grams;
        double steps = shown / division;
        return Math.Abs(steps - Math.Round(steps, MidpointRounding.ToEven)) < 1e-6 && Math.Abs(shown - grams) <= (division / 2) + 1e-9;
    }
}
